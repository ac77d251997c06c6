package dev.underprop.engine.standard;

import java.util.List;

public record Basis(String name, List<String> editions) {}
