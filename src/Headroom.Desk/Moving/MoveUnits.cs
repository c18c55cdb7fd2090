using Headroom.Domain.Quantities;

namespace Headroom.Desk.Moving;

/// <summary>How far a key moves a thing, in the unit in which its place is written: a round step of about ten centimetres, and a stride of about half a metre.</summary>
internal static class MoveUnits
{
    /// <summary>The step, the stride, and the digits that are kept.</summary>
    public static (double Step, double Stride, int Digits) Of(Unit unit) => unit.Symbol switch
    {
        "mm" => (100, 500, 0),
        "cm" => (10, 50, 0),
        "ft" => (0.25, 1, 2),
        "in" => (4, 20, 0),
        "km" => (0.0001, 0.0005, 5),
        _ => (0.1, 0.5, 2),
    };
}
