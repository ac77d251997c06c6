package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Cases.Case;
import dev.underprop.engine.assess.Cases.Level;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.statics.CaseBlock;
import dev.underprop.engine.statics.CaseGroup;
import dev.underprop.engine.statics.ForceChange;
import dev.underprop.engine.statics.Solution;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Cases of one level in one history and stiffness, once all of them stand with the posts in line: each post in turn out of it. */
final class OutOfLine {

    private final SituationRun run;
    private final SettingRun setting;
    private final Level level;
    private final int[] index;
    private final int[] all;
    private final CaseBlock block;
    private final ForceChange change;
    private final MemberRun.Reach[][] reach;
    private final double[] row;
    private final double[] sagging;
    private final double[] hogging;
    private final double[] shear;

    /**
     * @param index numbers of the cases among those of the situation
     * @param inLine the cases as they are with the posts in line
     * @param reach by case and member, how far it goes then; for cases of strength nothing is told
     */
    OutOfLine(
            SituationRun run,
            SettingRun setting,
            Level level,
            int[] index,
            List<Solution> inLine,
            MemberRun.Reach[][] reach) {
        this.run = run;
        this.setting = setting;
        this.level = level;
        this.index = index;
        this.all = new int[index.length];
        Arrays.setAll(all, i -> i);
        this.block = new CaseBlock(setting.solver(), run.seats().rules(Ties.HOLD), inLine);
        this.change = setting.solver().forceChange();
        this.reach = reach;
        this.row = new double[setting.solver().rowSize()];
        this.sagging = new double[index.length];
        this.hogging = new double[index.length];
        this.shear = new double[index.length];
    }

    /** Takes all cases with a post out of line. */
    void take(Variant variant) {
        BitSet pulling = new BitSet();
        solve(variant, Ties.HOLD, all, pulling);
        if (!pulling.isEmpty() && run.stands()) {
            int[] which = pulling.stream().toArray();
            for (Ties ties : setting.released()) {
                if (run.stands()) {
                    run.guess(level, variant.fit(), ties, all.length)
                            .or(run.guess(level, variant.fit(), Ties.HOLD, all.length));
                    solve(variant, ties, which, new BitSet());
                }
            }
        }
    }

    private void solve(Variant variant, Ties ties, int[] which, BitSet pulling) {
        CaseBlock.Guess guess = run.guess(level, variant.fit(), ties, all.length);
        int again = block.changed(
                variant.fit().unit(),
                variant.fit().factor(),
                run.seats().rules(ties),
                which,
                guess,
                new CaseBlock.Taker() {
                    @Override
                    public void together(CaseGroup group) {
                        if (group.loose().isEmpty() || setting.rocks(group, ties)) {
                            run.count(group.size(), 0);
                            note(variant, ties, group);
                            notePulls(group, pulling);
                        } else {
                            for (int r = 0; r < group.size(); r++) {
                                adrift(group.place(r));
                            }
                        }
                    }

                    @Override
                    public void adrift(int place) {
                        if (ties == Ties.RELEASED) {
                            run.count(1, 0);
                            run.noteHangsOnTies();
                        } else if (run.stands()) {
                            alone(place);
                        }
                    }

                    @Override
                    public Solution alone(int place) {
                        return setting.alone(variant, ties, index[place], reach[place]);
                    }
                });
        run.count(0, again);
    }

    private void notePulls(CaseGroup group, BitSet pulling) {
        for (int r = 0; r < group.size(); r++) {
            double greatest = 0;
            double pull = 0;
            BitSet fastened = setting.fastened();
            for (int c = fastened.nextSetBit(0); c >= 0; c = fastened.nextSetBit(c + 1)) {
                if (group.closed(c)) {
                    greatest = Math.max(greatest, Math.abs(group.values(c)[r]));
                    pull = Math.min(pull, group.values(c)[r]);
                }
            }
            if (SettingRun.pulls(pull, greatest)) {
                pulling.set(group.place(r));
            }
        }
    }

    private void note(Variant variant, Ties ties, CaseGroup group) {
        int number = variant.number(ties, 0);
        if (level == Level.STRENGTH) {
            run.met().strength(group, index, number);
            return;
        }
        run.met().allowable(group, variant.setting(ties), index, number);
        for (int m = 0; m < run.members().size(); m++) {
            noteForces(m, group, number);
        }
    }

    /**
     * A post out of line bends and shears members; what it does to deflection is not more than the tolerance itself, and
     * limits on deflection are for the floor in line. The loads are those of the case in line, so the change of the contacts'
     * forces bounds what members may get; only those it cannot exclude are looked at.
     */
    private void noteForces(int m, CaseGroup group, int number) {
        change.along(m, group, sagging, hogging, shear);
        MemberRun member = run.members().get(m);
        for (int r = 0; r < group.size(); r++) {
            int place = group.place(r);
            Case one = run.cases().get(index[place]);
            if (member.couldMatter(reach[place][m], sagging[r], hogging[r], shear[r], one.combination())) {
                group.writeForces(r, m, row);
                member.takeForces(row, number + index[place], one.combination());
            }
        }
    }
}
