package dev.underprop.app.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Evaluates the formula of a line as the contract describes it: symbols, numbers and signs set apart by blanks, powers on a
 * symbol or a bracket first.
 */
final class Formula {

    private static final String SIGNS = "+-×/(),";

    private final List<String> words;
    private final Map<String, Double> known;
    private int next;

    private Formula(String text, Map<String, Double> known) {
        this.words = words(text);
        this.known = known;
    }

    /** @param known values of the symbols that may stand in it, in SI */
    static double value(String text, Map<String, Double> known) {
        Formula formula = new Formula(text, known);
        double value = formula.sum();
        if (formula.next < formula.words.size()) {
            throw new IllegalArgumentException("cannot read " + text + " from " + formula.words.get(formula.next));
        }
        return value;
    }

    /** A word may end in an exponent, as in {@code b^2}, or in an opening bracket, as in {@code root(}. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split(" +")) {
            int power = word.indexOf('^');
            if (power >= 0) {
                if (power > 0) {
                    words.add(word.substring(0, power));
                }
                words.add("^");
                addOpened(word.substring(power + 1), words);
            } else {
                addOpened(word, words);
            }
        }
        return words;
    }

    private static void addOpened(String word, List<String> words) {
        if (word.endsWith("(") && word.length() > 1) {
            words.add(word.substring(0, word.length() - 1));
            words.add("(");
        } else if (!word.isEmpty()) {
            words.add(word);
        }
    }

    private boolean take(String word) {
        boolean there = next < words.size() && words.get(next).equals(word);
        next += there ? 1 : 0;
        return there;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take("+")) {
                value += product();
            } else if (take("-")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take("×")) {
                value *= power();
            } else if (take("/")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = atom();
        return take("^") ? Math.pow(base, atom()) : base;
    }

    private double atom() {
        if (take("(")) {
            double value = sum();
            close();
            return value;
        }
        String word = words.get(next++);
        if (next < words.size() && words.get(next).equals("(") && !known.containsKey(word)) {
            return function(word);
        }
        if (known.containsKey(word)) {
            return known.get(word);
        }
        if (word.equals("π")) {
            return Math.PI;
        }
        if (SIGNS.contains(word)) {
            throw new IllegalArgumentException(word + " where a value should stand in " + words);
        }
        return Double.parseDouble(word);
    }

    private void close() {
        if (!take(")")) {
            throw new IllegalArgumentException("a bracket is not closed in " + words);
        }
    }

    private double function(String name) {
        next++;
        List<Double> values = new ArrayList<>();
        do {
            values.add(sum());
        } while (take(","));
        close();
        return switch (name) {
            case "min" -> values.stream().mapToDouble(v -> v).min().orElseThrow();
            case "max" -> values.stream().mapToDouble(v -> v).max().orElseThrow();
            case "root" -> Math.sqrt(values.get(0));
            case "tan" -> Math.tan(values.get(0));
            case "sin" -> Math.sin(values.get(0));
            case "cos" -> Math.cos(values.get(0));
            case "log" -> Math.log10(values.get(0));
            default -> throw new IllegalArgumentException("no function " + name);
        };
    }
}
