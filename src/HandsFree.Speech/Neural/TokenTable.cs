using System.Buffers.Binary;
using System.Numerics.Tensors;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace HandsFree.Speech.Neural;

/// <summary>The table of tokens as it is stored, int8 with one scale and offset, and its product with the decoder's last state. Each
/// row is unfolded once a step for all hypotheses; the arithmetic is in floats, so that nothing is lost against the folded table
/// of four times the size. One thread at a time.</summary>
internal sealed class TokenTable
{
    private const int Width = NeuralModel.FrameSize;
    private const int Header = 2 * sizeof(float);
    private readonly byte[] file;
    private readonly float scale;
    private readonly float offset;
    private float[] logits = [];

    private TokenTable(byte[] file)
    {
        this.file = file;
        scale = BinaryPrimitives.ReadSingleLittleEndian(file);
        offset = BinaryPrimitives.ReadSingleLittleEndian(file.AsSpan(sizeof(float)));
    }

    private int Tokens => (file.Length - Header) / Width;

    /// <summary>Reads a table that <see cref="Write"/> wrote.</summary>
    public static TokenTable Read(string path) => new(File.ReadAllBytes(path));

    /// <summary>Writes scale, offset (floats, little-endian) and the rows, one a token.</summary>
    public static void Write(string path, ReadOnlySpan<byte> rows, float scale, float offset)
    {
        byte[] header = new byte[Header];
        BinaryPrimitives.WriteSingleLittleEndian(header, scale);
        BinaryPrimitives.WriteSingleLittleEndian(header.AsSpan(sizeof(float)), offset);
        using FileStream output = File.Create(path);
        output.Write(header);
        output.Write(rows);
    }

    /// <summary>The logits of all tokens.</summary>
    /// <param name="states">[hypotheses, 416].</param>
    /// <returns>[hypotheses, tokens]; valid until the next call.</returns>
    public ReadOnlySpan<float> Logits(ReadOnlySpan<float> states)
    {
        int count = states.Length / Width;
        if (logits.Length < count * Tokens)
        {
            logits = new float[count * Tokens];
        }

        Span<float> shifts = stackalloc float[count];
        for (int i = 0; i < count; i++)
        {
            shifts[i] = offset * TensorPrimitives.Sum(states.Slice(i * Width, Width));
        }

        Span<float> row = stackalloc float[Width];
        ReadOnlySpan<sbyte> stored = MemoryMarshal.Cast<byte, sbyte>(file.AsSpan(Header));
        for (int token = 0; token < Tokens; token++)
        {
            Unfold(stored.Slice(token * Width, Width), row);
            for (int i = 0; i < count; i++)
            {
                logits[(i * Tokens) + token] = (scale * TensorPrimitives.Dot(row, states.Slice(i * Width, Width))) + shifts[i];
            }
        }

        return logits.AsSpan(0, count * Tokens);
    }

    private static void Unfold(ReadOnlySpan<sbyte> stored, Span<float> row)
    {
        for (int at = 0; at < Width; at += Vector256<sbyte>.Count)
        {
            var (low, high) = Vector256.Widen(Vector256.Create(stored[at..]));
            var (first, second) = Vector256.Widen(low);
            var (third, fourth) = Vector256.Widen(high);
            Vector256.ConvertToSingle(first).CopyTo(row[at..]);
            Vector256.ConvertToSingle(second).CopyTo(row[(at + 8)..]);
            Vector256.ConvertToSingle(third).CopyTo(row[(at + 16)..]);
            Vector256.ConvertToSingle(fourth).CopyTo(row[(at + 24)..]);
        }
    }
}
