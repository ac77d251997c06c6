/** International Building Code, 2021. */
package dev.underprop.engine.clause.ibc2021;
