using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Traffic;

/// <summary>Turns devices into calls at once and active users. Remembers what it worked out: closets are mostly alike.</summary>
internal sealed class TrafficReckoner(double callsLost)
{
    /// <summary>The share of moments in which no more users are active than are counted: common practice, no source.</summary>
    public const double Certainty = 0.999;

    /// <summary>Share of calls that may be lost where no policy says it: common practice, no source.</summary>
    public const double UsualCallsLost = 0.01;

    // By users and share in one number: a share is at most 1, and users are whole.
    private readonly Dictionary<double, int> _active = [];

    /// <summary>Share of calls that may be lost [1].</summary>
    public double CallsLost => callsLost;

    /// <summary>What a mix asks, with streams that were led to it [bit/s].</summary>
    public TrafficDemand Of(TrafficMix mix, double streamDown, double streamUp)
    {
        var (down, up) = (0.0, 0.0);
        foreach (var (figures, count) in mix.Counts)
        {
            var active = Active(figures, count);
            down += active * (figures.Down?.Value.Value ?? 0);
            up += active * (figures.Up?.Value.Value ?? 0);
        }

        return new(streamDown, streamUp, Calls(mix), down, up);
    }

    /// <summary>What one device asks of its own port.</summary>
    public TrafficDemand Of(TrafficFigures figures, double received)
    {
        var active = Active(figures, 1);
        return new(
            received, figures.Stream?.Value.Value ?? 0, figures.CallShare?.Value.Value > 0 ? 1 : 0,
            active * (figures.Down?.Value.Value ?? 0), active * (figures.Up?.Value.Value ?? 0));
    }

    /// <summary>Users of devices alike that are active at once.</summary>
    public int Active(TrafficFigures figures, int count)
    {
        if (figures.Users is not { } users || users == 0 || figures.ActiveShare is not { } share)
            return figures.Users is > 0 ? figures.Users.Value * count : 0;
        var all = Math.Min(ActiveUsers.Most, (int)Math.Min(int.MaxValue, (long)users * count));
        var key = 2.0 * all + share.Value.Value;
        if (!_active.TryGetValue(key, out var active))
            _active[key] = active = ActiveUsers.Quantile(all, share.Value.Value, Certainty);
        return active;
    }

    /// <summary>Telephones of a mix and what they offer together.</summary>
    public static (int Phones, double Erlangs) Offered(TrafficMix mix)
    {
        var (phones, erlangs) = (0, 0.0);
        foreach (var (figures, count) in mix.Counts)
        {
            if (figures.CallShare is not { } share || share.Value.Value <= 0)
                continue;
            phones += count;
            erlangs += count * share.Value.Value;
        }

        return (phones, erlangs);
    }

    private int Calls(TrafficMix mix)
    {
        var (phones, erlangs) = Offered(mix);
        return phones == 0 ? 0
            : phones > Trunks.MostLines ? Trunks.LinesFor(Math.Min(erlangs, Trunks.MostLines / 2), callsLost)
            : Trunks.LinesFor(phones, erlangs / phones, callsLost);
    }
}
