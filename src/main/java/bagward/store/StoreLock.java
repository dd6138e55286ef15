package bagward.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps two running watches from one store. The lock is on a file beside it and is let go by the operating system when
 * the process ends, however it ends.
 */
final class StoreLock implements AutoCloseable {
    private final FileChannel channel;

    private StoreLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock of a store; its folder is made if it is missing.
     *
     * @throws StoreException if it is taken, or the folder cannot be written
     */
    static StoreLock take(Path store) {
        Path beside = store.resolveSibling(store.getFileName() + ".lock");
        try {
            Files.createDirectories(beside.toAbsolutePath().getParent());
            FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                throw new StoreException("store " + store + " is in use by another running Bagward: stop it first");
            }
            return new StoreLock(channel);
        } catch (IOException e) {
            throw new StoreException(
                    "store " + store
                            + ": its folder cannot be written; make it and give this user the right to write it",
                    e);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new StoreException("the lock of the store could not be let go", e);
        }
    }
}
