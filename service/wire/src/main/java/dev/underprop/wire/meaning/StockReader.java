package dev.underprop.wire.meaning;

import dev.underprop.api.model.Pad;
import dev.underprop.api.model.StockPad;
import dev.underprop.engine.sizing.Candidate;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Reads the pads at hand. A size that a pad grows to is read from its own words, so that it is the pad that is pasted later. */
final class StockReader {

    /** Sizes tried at the most, a choice of this service. */
    private static final int MOST = 2000;

    private final TimberReader timber;
    private final boolean priced;
    private final Map<String, Pad> pads = new LinkedHashMap<>();
    private final List<Supplier<Candidate>> candidates = new ArrayList<>();

    /** @param priced whether every pad must have a price */
    StockReader(TimberReader timber, boolean priced) {
        this.timber = timber;
        this.priced = priced;
    }

    void read(List<StockPad> stock, Spot at) {
        read(stock, at, true);
    }

    /** The pads of a plan, which stand by themselves. */
    void readPads(List<StockPad> stock, Spot at) {
        read(stock, at, false);
    }

    private void read(List<StockPad> stock, Spot at, boolean wrapped) {
        NameTable<Pad> names = new NameTable<>("pad");
        for (int i = 0; i < stock.size(); i++) {
            Spot spot = at.element(i);
            Spot pad = wrapped ? spot.member("pad") : spot;
            names.add(stock.get(i).getPad().getName(), stock.get(i).getPad(), pad.member("name"));
            read(stock.get(i), spot, pad);
        }
        if (stock.isEmpty()) {
            at.report(Messages.STOCK_UNSTATED, "");
        }
    }

    private void read(StockPad given, Spot at, Spot pad) {
        Supplier<dev.underprop.engine.plan.Pad> first = PadsReader.draft(given.getPad(), timber, pad);
        double weight = at.text("weight", given.getWeight()).quantityOr(Range.POINT_LOAD, Double.NaN);
        Double price = given.getPrice();
        if (priced && price == null) {
            at.report(Messages.PRICE_MISSING, "", Fault.shown(given.getPad().getName()));
        }
        double cost = price == null ? Double.NaN : price;
        PadGrower grower = new PadGrower(given, at.member("grow"));
        if (!grower.grows()) {
            add(given.getPad(), first, cost, weight);
        } else if (grower.sizes() + candidates.size() > MOST) {
            at.member("grow").report(Messages.STOCK_TOO_LARGE, "", "");
        } else if (at.findings().isEmpty()) {
            grow(grower.pads(), first.get(), cost, weight, at.member("grow"));
        }
    }

    private void add(Pad pad, Supplier<dev.underprop.engine.plan.Pad> read, double price, double weight) {
        pads.put(pad.getName(), pad);
        candidates.add(() ->
                Double.isNaN(weight) ? Candidate.of(read.get(), price) : new Candidate(read.get(), price, weight));
    }

    /** What a larger size costs and weighs goes with its volume. */
    private void grow(List<Pad> grown, dev.underprop.engine.plan.Pad first, double price, double weight, Spot at) {
        for (Pad pad : grown) {
            Findings findings = new Findings();
            Supplier<dev.underprop.engine.plan.Pad> read = PadsReader.draft(pad, timber, new Spot("", findings));
            findings.list().forEach(at::report);
            if (findings.isEmpty()) {
                dev.underprop.engine.plan.Pad larger = read.get();
                double share = larger.area() * larger.thickness() / (first.area() * first.thickness());
                add(pad, () -> larger, price * share, weight * share);
            }
        }
    }

    /** To be asked only when the request has no fault. */
    List<Candidate> candidates() {
        return candidates.stream().map(Supplier::get).toList();
    }

    /** The pads by name, as they are to be pasted. */
    Map<String, Pad> pads() {
        return pads;
    }
}
