namespace Sightglass.Web.Tests.Recordings;

/// <summary>A large file that is made as it is read, and tells how much of it was.</summary>
internal sealed class Endless(long length) : Stream
{
    /// <summary>Bytes that were read.</summary>
    public long Given { get; private set; }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => length;

    public override long Position { get => Given; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        int more = (int)Math.Min(count, length - Given);
        buffer.AsSpan(offset, more).Fill((byte)'1');
        Given += more;
        return more;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
