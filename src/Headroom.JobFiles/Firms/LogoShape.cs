using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Firms;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Firms;

/// <summary>The file of a picture, beside the file that names it.</summary>
internal sealed class LogoShape : ScalarShape<Artwork>
{
    /// <summary>The most bytes of a picture: it stands on every paper, and papers go by mail.</summary>
    public const int MostBytes = 1024 * 1024;

    /// <inheritdoc/>
    public override string InWords => "a PNG or SVG of at most 1 MiB, beside this file or in a folder below it";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($@"^(.+\.([pP][nN][gG]|[sS][vV][gG])|{SchemaParts.Unknown})$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Artwork value)
    {
        value = null;
        var name = scalar.Text.Trim();
        if (Path.IsPathRooted(name) || name.Split('/', '\\').Contains("..") || name.Contains(':', StringComparison.Ordinal))
            return Refuse(FirmSlips.NoLogo, scalar, reader, "put it beside this file, and name it without its folder");
        if (Bytes(Path.Combine(JobFile.FolderOf(scalar.At.File), name), scalar, reader) is not { } bytes)
            return false;
        if (PngSize.Of(bytes) is { } size)
            return Sized(size, bytes, scalar, reader, out value);
        var (art, problem) = SvgArt.Read(bytes);
        if (art is null)
            reader.Refuse(FirmSlips.NoPicture, scalar.At, $"{Given(scalar, reader)}: {problem}", "a PNG, or an SVG of plain shapes in plain colours", "turn text and effects into paths and save it as plain SVG, or save it as PNG");
        value = art;
        return art is not null;
    }

    private static bool Sized((int Width, int Height) size, byte[] bytes, YamlScalar scalar, FieldReader reader, out Artwork? value)
    {
        value = new Artwork(size.Width, size.Height) { Png = bytes };
        if (size.Width is >= 16 and <= PngSize.Most && size.Height is >= 16 and <= PngSize.Most)
            return true;
        reader.Refuse(FirmSlips.NoPicture, scalar.At, $"{Given(scalar, reader)}, of {size.Width} x {size.Height} points", $"16 to {PngSize.Most} points each way", "save it again in another size; 600 points across are plenty");
        return false;
    }

    private byte[]? Bytes(string path, YamlScalar scalar, FieldReader reader)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                Refuse(FirmSlips.NoLogo, scalar, reader, "no such file is there; check the name");
                return null;
            }

            if (file.Length <= MostBytes)
                return File.ReadAllBytes(path);
            reader.Refuse(FirmSlips.LargeLogo, scalar.At, FormattableString.Invariant($"{Given(scalar, reader)}, a file of {file.Length / (1024.0 * 1024):0.#} MiB"), InWords, "save it smaller: 600 points across are plenty");
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            Refuse(FirmSlips.NoLogo, scalar, reader, "it is there and cannot be read; see who may read it");
        }

        return null;
    }
}
