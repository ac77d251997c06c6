package dev.underprop.engine.material;

public record WoodGrade(String species, String grade, double fb, double e) {}
