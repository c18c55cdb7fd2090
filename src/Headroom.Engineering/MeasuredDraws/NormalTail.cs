namespace Headroom.Engineering.MeasuredDraws;

/// <summary>The normal distribution, as far as draws need it.</summary>
public static class NormalTail
{
    /// <summary>The share of a normal distribution that lies at or below a point [1].</summary>
    /// <param name="z">The point, in standard deviations from the mean [1].</param>
    /// <returns>The share [1].</returns>
    /// <remarks>Source: W. J. Cody 1969 as arranged by G. West 2005 (after Hart 1968), from memory; good to 14 digits.</remarks>
    public static double Below(double z)
    {
        var x = Math.Abs(z);
        if (x > 37)
            return z > 0 ? 1 : 0;
        var tail = x < 7.07106781186547 ? Math.Exp(-x * x / 2) * Near(x) : Math.Exp(-x * x / 2) / Far(x) / 2.506628274631;
        return z > 0 ? 1 - tail : tail;
    }

    private static double Near(double x) =>
        ((((((3.52624965998911E-02 * x + 0.700383064443688) * x + 6.37396220353165) * x + 33.912866078383) * x + 112.079291497871) * x + 221.213596169931) * x + 220.206867912376)
        / (((((((8.83883476483184E-02 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461) * x + 296.564248779674) * x + 637.333633378831) * x + 793.826512519948) * x + 440.413735824752);

    private static double Far(double x) => x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
}
