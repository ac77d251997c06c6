package dev.underprop.engine.section;

public record RectangularSection(double breadth, double depth) {
    public double inertia() {
        return breadth * depth * depth * depth / 12;
    }
}
