using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Headroom.Tests;

/// <summary>A picture of grays, read from a PNG of eight bits without interlacing, gray or red, green and blue, as programs that render pages write it.</summary>
internal sealed class GrayPicture
{
    private GrayPicture(int width, int height, byte[] points) => (Width, Height, Points) = (width, height, points);

    public int Width { get; }

    public int Height { get; }

    public byte[] Points { get; }

    // PNG (ISO/IEC 15948): chunks of length, name, data and a checksum; rows each with a filter before them.
    public static GrayPicture Read(byte[] png)
    {
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
        Assert.Equal((8, 0), (png[24], png[28]));
        var (parts, inks) = png[25] switch { 0 => (1, 1), 2 => (3, 3), 6 => (4, 3), _ => throw new NotSupportedException($"Colour type {png[25]} of PNG is not written by the program that renders pages.") };
        using var packed = new MemoryStream();
        for (var at = 8; at < png.Length; at += 12 + BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at)))
        {
            if (Encoding.ASCII.GetString(png, at + 4, 4) == "IDAT")
                packed.Write(png, at + 8, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at)));
        }

        packed.Position = 0;
        using var rows = new ZLibStream(packed, CompressionMode.Decompress);
        var points = new byte[width * height];
        var (row, above) = (new byte[width * parts + 1], new byte[width * parts + 1]);
        for (var y = 0; y < height; y++)
        {
            rows.ReadExactly(row);
            for (var x = 1; x < row.Length; x++)
                row[x] += Foretold(row[0], x > parts ? row[x - parts] : (byte)0, above[x], x > parts ? above[x - parts] : (byte)0);
            for (var x = 0; x < width; x++)
                points[y * width + x] = (byte)(row.AsSpan(1 + x * parts, inks).ToArray().Sum(part => part) / inks);
            (row, above) = (above, row);
        }

        return new(width, height, points);
    }

    /// <summary>How far two pictures lie apart at the worst spot: mean gray of squares, of 255, so that a hair moved by a point counts little and a missing line counts much.</summary>
    public double Apart(GrayPicture other, int square = 8)
    {
        if ((Width, Height) != (other.Width, other.Height))
            return 255;
        var worst = 0.0;
        for (var top = 0; top + square <= Height; top += square)
        {
            for (var left = 0; left + square <= Width; left += square)
                worst = Math.Max(worst, Math.Abs(Mean(left, top, square) - other.Mean(left, top, square)));
        }

        return worst;
    }

    private double Mean(int left, int top, int square)
    {
        var sum = 0;
        for (var y = top; y < top + square; y++)
        {
            for (var x = left; x < left + square; x++)
                sum += Points[y * Width + x];
        }

        return (double)sum / (square * square);
    }

    private static byte Foretold(byte filter, byte left, byte above, byte aboveLeft)
    {
        var paeth = left + above - aboveLeft;
        var (toLeft, toAbove, toBoth) = (Math.Abs(paeth - left), Math.Abs(paeth - above), Math.Abs(paeth - aboveLeft));
        return filter switch
        {
            1 => left,
            2 => above,
            3 => (byte)((left + above) / 2),
            4 => toLeft <= toAbove && toLeft <= toBoth ? left : toAbove <= toBoth ? above : aboveLeft,
            _ => 0,
        };
    }
}
