using System.Buffers.Binary;
using System.IO.Compression;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>A picture in greys, read from a PNG of 8 bits a sample without interlacing (W3C, PNG third edition, 2025: what poppler and
/// Chromium write).</summary>
internal sealed record GreyPicture(int Width, int Height, byte[] Greys)
{
    private const int BlockSize = 4;

    public static GreyPicture Read(string path)
    {
        ReadOnlySpan<byte> file = File.ReadAllBytes(path);
        (int width, int height, int samples) = (0, 0, 0);
        using MemoryStream packed = new();
        for (int at = 8; at < file.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(file[at..]);
            ReadOnlySpan<byte> data = file.Slice(at + 8, length);
            switch (System.Text.Encoding.ASCII.GetString(file.Slice(at + 4, 4)))
            {
                case "IHDR":
                    (width, height) = (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data[4..]));
                    samples = (data[8], data[9], data[12]) switch
                    {
                        (8, 0, 0) => 1,
                        (8, 2, 0) => 3,
                        (8, 6, 0) => 4,
                        _ => throw new InvalidDataException($"{path}: bits {data[8]}, colour {data[9]}, interlace {data[12]} are not read here"),
                    };
                    break;
                case "IDAT":
                    packed.Write(data);
                    break;
            }

            at += length + 12;
        }

        packed.Position = 0;
        using ZLibStream unpacked = new(packed, CompressionMode.Decompress);
        byte[] greys = new byte[width * height];
        byte[] before = new byte[width * samples];
        byte[] line = new byte[(width * samples) + 1];
        for (int y = 0; y < height; y++)
        {
            unpacked.ReadExactly(line);
            byte[] now = Unfiltered(line, before, samples);
            for (int x = 0; x < width; x++)
            {
                int from = x * samples;
                greys[(y * width) + x] = samples == 1 ? now[from] : (byte)((now[from] + now[from + 1] + now[from + 2]) / 3);
            }

            before = now;
        }

        return new(width, height, greys);
    }

    /// <summary>How much two pictures of the same size differ: the share of blocks of 4 by 4 whose mean grey differs by more than that.
    /// Means of blocks forgive what another version of a renderer does at the edges of letters.</summary>
    public double ShareOfBlocksThatDiffer(GreyPicture other, double by)
    {
        int different = 0;
        int blocks = 0;
        for (int y = 0; y + BlockSize <= Height; y += BlockSize)
        {
            for (int x = 0; x + BlockSize <= Width; x += BlockSize)
            {
                blocks++;
                different += Math.Abs(Mean(x, y) - other.Mean(x, y)) > by ? 1 : 0;
            }
        }

        return (double)different / blocks;
    }

    private double Mean(int left, int top)
    {
        int sum = 0;
        for (int y = top; y < top + BlockSize; y++)
        {
            for (int x = left; x < left + BlockSize; x++)
            {
                sum += Greys[(y * Width) + x];
            }
        }

        return sum / (double)(BlockSize * BlockSize);
    }

    private static byte[] Unfiltered(byte[] line, byte[] above, int samples)
    {
        byte[] now = new byte[above.Length];
        for (int i = 0; i < now.Length; i++)
        {
            int left = i >= samples ? now[i - samples] : 0;
            int up = above[i];
            int corner = i >= samples ? above[i - samples] : 0;
            int predicted = line[0] switch
            {
                0 => 0,
                1 => left,
                2 => up,
                3 => (left + up) / 2,
                4 => Paeth(left, up, corner),
                _ => throw new InvalidDataException($"no filter {line[0]}"),
            };
            now[i] = (byte)(line[i + 1] + predicted);
        }

        return now;
    }

    private static int Paeth(int left, int up, int corner)
    {
        int guess = left + up - corner;
        (int toLeft, int toUp, int toCorner) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
        return toLeft <= toUp && toLeft <= toCorner ? left : toUp <= toCorner ? up : corner;
    }
}
