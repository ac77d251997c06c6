package dev.underprop.engine.standard;

public record Citation(String document, String edition, String locator, String standing) {}
