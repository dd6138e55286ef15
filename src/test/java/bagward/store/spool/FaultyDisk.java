package bagward.store.spool;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** A disk whose n-th call fails, once or from then on; a write that fails has written half of what it was given. */
final class FaultyDisk implements Disk {
    private final boolean fromThenOn;
    private int left;

    FaultyDisk(boolean fromThenOn) {
        this.fromThenOn = fromThenOn;
        this.left = Integer.MAX_VALUE;
    }

    void failAt(int call) {
        left = call;
    }

    boolean struck() {
        return left <= 0;
    }

    private boolean fails() {
        left--;
        return left == 0 || (fromThenOn && left < 0);
    }

    private void call() throws IOException {
        if (fails()) {
            throw new IOException("No space left on device");
        }
    }

    @Override
    public FileChannel create(Path file) throws IOException {
        call();
        return new Faulty(Disk.REAL.create(file));
    }

    /** The calls that a segment makes; others are not supported. */
    private final class Faulty extends FileChannel {
        private final FileChannel real;

        Faulty(FileChannel real) {
            this.real = real;
        }

        @Override
        public int write(ByteBuffer from, long position) throws IOException {
            if (fails()) {
                ByteBuffer half = from.duplicate();
                half.limit(half.position() + half.remaining() / 2);
                real.write(half, position);
                throw new IOException("No space left on device");
            }
            return real.write(from, position);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            call();
            real.force(metaData);
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            call();
            real.truncate(size);
            return this;
        }

        @Override
        public long size() throws IOException {
            return real.size();
        }

        @Override
        protected void implCloseChannel() throws IOException {
            real.close();
            call();
        }

        @Override
        public int read(ByteBuffer to) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long read(ByteBuffer[] to, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int write(ByteBuffer from) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long write(ByteBuffer[] from, int offset, int length) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long position() {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileChannel position(long newPosition) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel target) {
            throw new UnsupportedOperationException();
        }

        @Override
        public long transferFrom(ReadableByteChannel from, long position, long count) {
            throw new UnsupportedOperationException();
        }

        @Override
        public int read(ByteBuffer to, long position) {
            throw new UnsupportedOperationException();
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock lock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) {
            throw new UnsupportedOperationException();
        }
    }
}
