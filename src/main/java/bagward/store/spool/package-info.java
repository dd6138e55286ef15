/** What waits on disk while its store is away. */
package bagward.store.spool;
