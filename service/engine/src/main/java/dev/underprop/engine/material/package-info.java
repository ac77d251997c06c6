/** Timber grades with their reference values. */
package dev.underprop.engine.material;
