/** Cross-sections of members. */
package dev.underprop.engine.section;
