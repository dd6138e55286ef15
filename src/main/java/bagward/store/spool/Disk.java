package bagward.store.spool;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** How the spool reaches its files. */
interface Disk {
    /** The files of the operating system. */
    Disk REAL = file -> FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    /** A new file, open for writing. */
    FileChannel create(Path file) throws IOException;

    /** Makes the names in a folder outlive a power cut, where the operating system can sync a folder. */
    static void syncNames(Path folder) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
                names.force(true);
            }
        }
    }
}
