using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Addressing;

namespace Headroom.Engineering.Sums.Addressing;

/// <summary>How many addresses are to be lent out.</summary>
internal static class AddressesToLend
{
    private static readonly NumberInput PerHour = new("an-hour", "visitors that come in an hour", new Bounds(1, 100_000));
    private static readonly QuantityInput Stay = new("stay", "how long each stays", Seconds.Units, new(0.02, 8760, "h"));
    private static readonly QuantityInput Lease = new("lease", "for how long an address is lent", Seconds.Units, new(0.02, 8760, "h"));

    private static readonly SumOutput Pool = new("pool", "", "addresses that are enough for 99.9 % of the time");
    private static readonly SumOutput Mean = new("mean", "", "addresses held on average");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "addresses-to-lend",
        Discipline = AddressingSums.Discipline,
        Answers = "how many addresses must be lent out when people come and go?",
        Inputs = [PerHour, Stay, Lease],
        Outputs = [Pool, Mean],
        Formula = "each holds L + L/2 · floor(2 · stay / L); mean = visitors · that; the pool is the 99.9 % quantile of a Poisson distribution",
        Source = "RFC 2131, section 4.4.5, renewal at half the lease, from memory; Little's law",
        Example = "an-hour 20 stay 1.5 h lease 1 h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var held = LeasePool.HeldHours(given[Stay] / 3600, given[Lease] / 3600);
        var mean = LeasePool.Mean(given[PerHour], held);
        var pool = LeasePool.Needed(mean, LeasePool.Enough);
        return new SumAnswer(
            $"{new Told(pool, "addresses")} are enough for 99.9 % of the time; {new Told(mean, "")} are held on average.",
            [Pool.Is(pool), Mean.Is(mean)],
            [new("held by one", "L + L/2 · floor(2 · stay / L)", held, "h"), new("mean", $"{Words.Of(given[PerHour])} · {Words.Of(held)}", mean, ""), new("pool", "the least number that is enough", pool, "")])
        {
            Notes = [$"Telephones that make up an address of their own for each visit count each time."],
        };
    }
}
