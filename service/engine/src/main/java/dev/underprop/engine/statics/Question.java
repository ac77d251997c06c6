package dev.underprop.engine.statics;

/**
 * A case to be solved and by which rules, with what is asked of it again and again: plain arrays, because it is asked for
 * every contact of every case.
 *
 * @param absent by contact, whether it is not there; not to be changed
 * @param pulls by contact, whether it can pull; not to be changed
 * @param total sum of the magnitudes of all loads (N)
 * @param offset whether any gap or lift acts
 */
record Question(LoadCase loadCase, Rules rules, boolean[] absent, boolean[] pulls, double total, boolean offset) {

    /** The same loads by the same rules with gaps changed. */
    Question regapped(LoadCase changed) {
        return new Question(changed, rules, absent, pulls, total, true);
    }

    /** The same rules for one more unit. */
    Question with(Loadings loadings, int unit, double factor) {
        return new Question(
                loadCase.with(unit, factor),
                rules,
                absent,
                pulls,
                total + Math.abs(factor) * loadings.total(unit),
                offset || loadings.offset(unit));
    }
}
