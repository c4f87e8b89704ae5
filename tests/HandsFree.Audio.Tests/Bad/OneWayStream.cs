namespace HandsFree.Audio.Tests.Bad;

/// <summary>A stream as a pipe gives it: no length, no way back, a few bytes at a time; on wish endless or broken at its end.</summary>
internal sealed class OneWayStream(byte[] bytes, bool endless = false, string? failure = null) : Stream
{
    private int _at;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (endless)
        {
            return count;
        }

        int some = Math.Min(Math.Min(count, 7), bytes.Length - _at);
        if (some == 0 && failure is not null)
        {
            throw new IOException(failure);
        }

        bytes.AsSpan(_at, some).CopyTo(buffer.AsSpan(offset));
        _at += some;
        return some;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
