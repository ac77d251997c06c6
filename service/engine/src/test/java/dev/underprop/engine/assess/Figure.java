package dev.underprop.engine.assess;

import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;

/** Works out one printed number by the engine's own doors, in SI. */
interface Figure {

    double of(Case published, Expected wanted);
}
