using Headroom.Domain.Quantities;

namespace Headroom.Domain.Tests.Rules;

internal static class Made
{
    public static Given<T> Of<T>(T value)
        where T : struct, IQuantity<T> => Make.Given(value, Origin.Invented);

    /// <summary>Puts a changed copy in the place of a thing.</summary>
    public static void Change<T>(this List<T> things, int index, Func<T, T> change) => things[index] = change(things[index]);
}
