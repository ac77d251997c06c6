package dev.underprop.wire.answer;

import dev.underprop.api.model.BearingLine;
import dev.underprop.api.model.JoistLine;
import dev.underprop.api.model.LayoutLines;
import dev.underprop.api.model.Quantity;
import dev.underprop.api.model.ShoreLine;
import dev.underprop.api.model.StandLine;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Shore;
import dev.underprop.wire.quantity.Kind;

/** Writes where everything lies, for a drawing from above. */
final class LayoutWriter {

    private final Figures figures;

    LayoutWriter(Figures figures) {
        this.figures = figures;
    }

    LayoutLines lines(JobPlan plan) {
        return new LayoutLines()
                .joists(plan.floor().joists().stream().map(this::joist).toList())
                .bearings(plan.floor().bearings().stream().map(this::bearing).toList())
                .shores(plan.shores().stream().map(this::shore).toList());
    }

    private JoistLine joist(Joist joist) {
        return new JoistLine()
                .joist(joist.name())
                .x(at(joist.x()))
                .from(at(joist.start()))
                .to(at(joist.start() + joist.length()));
    }

    private BearingLine bearing(Bearing bearing) {
        BearingLine line = new BearingLine()
                .bearing(bearing.name())
                .y(at(bearing.y()))
                .length(figures.quantity(Kind.SIZE, bearing.length()));
        double from = bearing.from();
        double to = bearing.to();
        if (bearing.body() instanceof Girder girder) {
            from = girder.start();
            to = girder.end();
            line.piers(girder.piers().stream()
                    .map(pier -> stand(pier.name(), pier.x()))
                    .toList());
        }
        if (Double.isFinite(from)) {
            line.from(at(from));
        }
        return Double.isFinite(to) ? line.to(at(to)) : line;
    }

    private ShoreLine shore(Shore shore) {
        return new ShoreLine()
                .shore(shore.name())
                .y(at(shore.y()))
                .from(at(shore.start()))
                .to(at(shore.start() + shore.length()))
                .posts(shore.posts().stream()
                        .map(post -> stand(post.name(), post.x()))
                        .toList());
    }

    private StandLine stand(String name, double x) {
        return new StandLine().name(name).x(at(x));
    }

    private Quantity at(double place) {
        return figures.quantity(Kind.POSITION, place);
    }
}
