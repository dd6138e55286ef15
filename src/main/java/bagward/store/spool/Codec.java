package bagward.store.spool;

import java.util.List;

/** Writes items as bytes and reads them back. */
interface Codec<T> {
    /** The items as bytes. */
    byte[] encode(List<T> items);

    /**
     * The items of bytes that {@link #encode} wrote.
     *
     * @throws bagward.store.StoreException if a newer program wrote them
     */
    List<T> decode(byte[] bytes);
}
