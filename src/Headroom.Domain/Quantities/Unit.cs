namespace Headroom.Domain.Quantities;

/// <summary>One unit in which a quantity may be written: base value = written number x <paramref name="Factor"/> + <paramref name="Offset"/>.</summary>
/// <param name="Symbol">The symbol as shown, such as <c>ft</c>.</param>
/// <param name="Factor">What one of it is in the base unit.</param>
/// <param name="Offset">What zero of it is in the base unit; other than 0 for temperatures only.</param>
/// <param name="Aliases">Other spellings that are understood, such as <c>'</c> or <c>feet</c>.</param>
public record Unit(string Symbol, double Factor, double Offset = 0, params string[] Aliases)
{
    /// <summary>Turns a number in this unit into the base unit.</summary>
    /// <param name="written">The number as written.</param>
    /// <returns>The number in the base unit.</returns>
    public virtual double ToBase(double written) => written * Factor + Offset;

    /// <summary>Turns a number in the base unit into this unit.</summary>
    /// <param name="value">The number in the base unit.</param>
    /// <returns>The number in this unit.</returns>
    public virtual double FromBase(double value) => (value - Offset) / Factor;

    /// <summary>Says whether a text is this unit's symbol or one of its other spellings.</summary>
    /// <param name="text">The text after the number.</param>
    /// <returns>True when it is.</returns>
    public bool Is(ReadOnlySpan<char> text)
    {
        if (text.SequenceEqual(Symbol))
            return true;
        foreach (var alias in Aliases)
        {
            if (text.SequenceEqual(alias))
                return true;
        }

        return false;
    }
}
