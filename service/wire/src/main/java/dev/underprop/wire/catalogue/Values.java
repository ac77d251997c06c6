package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueValue;
import dev.underprop.api.model.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Kind;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.quantity.ValueWriter;

/** Writes values of the engine as the catalogue shows them: in plan syntax, each with its source. */
final class Values {

    /** The kind of a value without a unit. */
    static final String NUMBER = "number";

    private Values() {}

    /** A value in SI, written in the units that US tables use. */
    static CatalogueValue of(String name, Kind kind, Dimension dimension, Cited cited) {
        return value(name, dimension.noun(), kind.planText(cited.value(), UnitSystem.US), cited);
    }

    /** A number without a unit. */
    static CatalogueValue number(String name, Cited cited) {
        return value(name, NUMBER, ValueWriter.nine(cited.value()), cited);
    }

    private static CatalogueValue value(String name, String kind, String text, Cited cited) {
        return new CatalogueValue()
                .name(name)
                .symbol(cited.symbol())
                .kind(kind)
                .value(text)
                .source(source(cited.citation()));
    }

    private static Citation source(dev.underprop.engine.standard.Citation citation) {
        return new Citation()
                .document(citation.document())
                .edition(citation.edition())
                .locator(citation.locator())
                .standing(citation.standing().words());
    }
}
