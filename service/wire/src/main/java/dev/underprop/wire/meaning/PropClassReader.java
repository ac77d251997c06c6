package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.wire.fault.Messages;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the class of a prop as it is marked. The supplier is to be asked only when the plan has no fault. */
final class PropClassReader {

    /** Class A ends at 4 m, the others at 5.5 m; sizes go by half metres (EN 1065:1998, from memory). */
    private static final Pattern MARK = Pattern.compile("A(25|30|35|40)|([B-E])(25|30|35|40|45|50|55)");

    private PropClassReader() {}

    static Supplier<PostType.Named> read(Text text) {
        if (!text.said()) {
            return PostType.NoClass::new;
        }
        Matcher mark = MARK.matcher(text.value().replace(" ", "").toUpperCase(Locale.ROOT));
        if (!mark.matches()) {
            text.spot().report(Messages.PROP_CLASS_UNKNOWN, text.value());
            return PostType.NoClass::new;
        }
        String found = mark.group();
        double decimetres = Integer.parseInt(found.substring(1));
        return () -> new PropClass(PropClass.Letter.valueOf(found.substring(0, 1)), decimetres / 10);
    }
}
