namespace Calx.Papers.Tables;

/// <summary>Reads a part of a workbook and stops once more has been unpacked than is allowed, whatever sizes the file
/// claims.</summary>
internal sealed class BoundedStream(Stream inner, ExpansionBudget budget) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int read = inner.Read(buffer);
        budget.Spend(read);
        return read;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            inner.Dispose();
        base.Dispose(disposing);
    }
}

/// <summary>How many bytes may still be unpacked from a workbook.</summary>
internal sealed class ExpansionBudget(long bytes)
{
    private long left = bytes;

    /// <exception cref="ExpansionException">More was unpacked than is allowed.</exception>
    public void Spend(int read)
    {
        left -= read;
        if (left < 0)
            throw new ExpansionException();
    }
}

/// <summary>A workbook unpacks to more than is allowed.</summary>
internal sealed class ExpansionException : IOException;
