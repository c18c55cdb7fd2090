using System.Globalization;

namespace Headroom.Domain.Addresses;

/// <summary>An address of the internet protocol, version 4.</summary>
/// <param name="Value">Its 32 bits, the first octet highest.</param>
public readonly record struct Ip4(uint Value)
{
    /// <summary>Reads four plain decimal numbers with points. Short, octal and hexadecimal forms are refused: programs disagree about what they mean.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The address; null when the text is none.</returns>
    public static Ip4? Read(string text)
    {
        var parts = text.Split('.');
        if (parts.Length != 4)
            return null;
        uint value = 0;
        foreach (var part in parts)
        {
            if (Octet(part) is not { } octet)
                return null;
            value = value << 8 | octet;
        }

        return new Ip4(value);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value >> 24}.{Value >> 16 & 255}.{Value >> 8 & 255}.{Value & 255}");

    // 010 is 8 to some programs and 10 to others.
    private static uint? Octet(string part) =>
        part.Length is >= 1 and <= 3 && part.All(char.IsAsciiDigit) && (part.Length == 1 || part[0] != '0')
        && uint.Parse(part, CultureInfo.InvariantCulture) is var octet and <= 255 ? octet : null;
}
