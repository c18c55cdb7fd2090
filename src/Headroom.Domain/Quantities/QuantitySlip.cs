namespace Headroom.Domain.Quantities;

/// <summary>The kinds of slip people make when they write a value.</summary>
public enum QuantitySlip
{
    /// <summary>The text is no number with a unit.</summary>
    NotANumber,

    /// <summary>A number stands alone where a unit is needed.</summary>
    UnitMissing,

    /// <summary>The unit is not one of this quantity.</summary>
    UnitUnknown,

    /// <summary>A comma stands where the point belongs, or between thousands.</summary>
    Comma,

    /// <summary>A range whose larger end stands first.</summary>
    Reversed,
}
