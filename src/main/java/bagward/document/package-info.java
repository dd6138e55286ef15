/** Documents (YAML) that people write: read with line and path, every fault collected, before anything is built. Pure. */
package bagward.document;
