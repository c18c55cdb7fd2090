using System.Globalization;

namespace Headroom.Domain.Addresses;

/// <summary>A range of addresses with a common beginning: <c>10.20.0.0/22</c>.</summary>
/// <param name="First">The first address; it has no bits behind the prefix.</param>
/// <param name="Prefix">How many bits all addresses of it share, 0 to 32.</param>
public readonly record struct Ip4Range(Ip4 First, int Prefix)
{
    /// <summary>How many addresses it has.</summary>
    public long Size => 1L << 32 - Prefix;

    /// <summary>How many devices it has addresses for: all but its own and the one for everybody; both of a /31 (RFC 3021) and the one of a /32.</summary>
    public long Hosts => Prefix >= 31 ? Size : Size - 2;

    /// <summary>The last address.</summary>
    public Ip4 Last => new((uint)(First.Value + Size - 1));

    /// <summary>The mask, as some devices want it.</summary>
    public Ip4 Mask => new(MaskOf(Prefix));

    /// <summary>The mask with every bit turned, as filters want it.</summary>
    public Ip4 Wildcard => new(~MaskOf(Prefix));

    /// <summary>Reads a range. An address with bits behind the prefix is refused: nobody can say which of the two was meant.</summary>
    /// <param name="text">The text, such as <c>10.20.0.0/22</c>.</param>
    /// <param name="advice">What to do when it is none; null otherwise.</param>
    /// <returns>The range; null when the text is none.</returns>
    public static Ip4Range? Read(string text, out string? advice)
    {
        var (address, bits) = Halves(text);
        advice = "write four numbers from 0 to 255 without leading zeros and the prefix behind a stroke, like '10.20.0.0/22'";
        if (Ip4.Read(address) is not { } first || PrefixOf(bits, 32) is not { } prefix)
            return null;
        var start = first.Value & MaskOf(prefix);
        advice = start == first.Value ? null : string.Create(CultureInfo.InvariantCulture, $"there are bits behind the prefix: write '{new Ip4(start)}/{prefix}' for the range, or correct the prefix");
        return advice is null ? new Ip4Range(first, prefix) : null;
    }

    /// <summary>Says whether two ranges have an address in common.</summary>
    /// <param name="other">The other range.</param>
    /// <returns>True when they have.</returns>
    public bool Overlaps(Ip4Range other) => First.Value <= other.Last.Value && other.First.Value <= Last.Value;

    /// <summary>Says whether another range lies in this one.</summary>
    /// <param name="other">The other range.</param>
    /// <returns>True when all of it does.</returns>
    public bool Contains(Ip4Range other) => First.Value <= other.First.Value && other.Last.Value <= Last.Value;

    /// <summary>The address at a place in it.</summary>
    /// <param name="at">The place, from 0.</param>
    /// <returns>The address.</returns>
    public Ip4 At(long at) => new((uint)(First.Value + at));

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{First}/{Prefix}");

    /// <summary>The two halves of a range as written, before and behind the stroke.</summary>
    internal static (string Address, string Bits) Halves(string text)
    {
        var stroke = text.IndexOf('/', StringComparison.Ordinal);
        return stroke < 0 ? (text, "") : (text[..stroke], text[(stroke + 1)..]);
    }

    /// <summary>A prefix as written; null when it is none.</summary>
    internal static int? PrefixOf(string text, int most) =>
        text.Length is >= 1 and <= 3 && text.All(char.IsAsciiDigit) && (text.Length == 1 || text[0] != '0')
        && int.Parse(text, CultureInfo.InvariantCulture) is var prefix && prefix <= most ? prefix : null;

    private static uint MaskOf(int prefix) => prefix == 0 ? 0 : uint.MaxValue << 32 - prefix;
}
