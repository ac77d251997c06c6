package dev.underprop.app.report;

import dev.underprop.api.model.NotCheckedItem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was not checked, one line for each reason: every question that it leaves open, and where. */
final class OpenQuestions {
    private OpenQuestions() {}

    static List<String> lines(List<NotCheckedItem> items) {
        Map<String, Map<String, List<String>>> byReason = new LinkedHashMap<>();
        for (NotCheckedItem item : items) {
            List<String> places = byReason.computeIfAbsent(item.getReason(), reason -> new LinkedHashMap<>())
                    .computeIfAbsent(item.getTitle(), title -> new ArrayList<>());
            String place = item.getPlace();
            if (place != null && !places.contains(place)) {
                places.add(place);
            }
        }
        List<String> lines = new ArrayList<>();
        byReason.forEach((reason, questions) -> lines.add(line(reason, questions)));
        return lines;
    }

    private static String line(String reason, Map<String, List<String>> questions) {
        List<String> words = new ArrayList<>();
        questions.forEach((title, places) ->
                words.add(places.isEmpty() ? title : title + " (" + String.join(", ", places) + ")"));
        return reason.replaceFirst("[.]$", "") + ": " + String.join("; ", words) + ".";
    }
}
