package dev.underprop.app.http;

import dev.underprop.api.model.CataloguePage;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.catalogue.Parts;
import dev.underprop.wire.catalogue.Wanted;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.fault.Fault;
import io.javalin.http.Context;

/** The catalogue, to be read and to be kept for as long as it is good. */
final class CataloguePages {
    private final Parts parts = Parts.standard();

    void index(Context context) {
        Negotiation.accept(context, Replies.JSON);
        Query.none(context);
        reply(context, parts.index());
    }

    void part(Context context) {
        Negotiation.accept(context, Replies.JSON);
        String name = context.pathParam("part");
        if (!parts.names().contains(name)) {
            throw unknown(name);
        }
        Wanted wanted = Query.wanted(context, parts.tables(name));
        CataloguePage page = parts.page(name, wanted).orElseThrow(() -> unknown(name));
        reply(context, page);
    }

    private Refused unknown(String name) {
        String detail = "The catalogue has no part " + Fault.shown(name) + "; its parts are "
                + String.join(", ", parts.names()) + ".";
        return Refused.because(ProblemKind.NOT_FOUND, detail);
    }

    private static void reply(Context context, Object model) {
        new Kept(Replies.JSON, Documents.json(model, false)).reply(context);
    }
}
