using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>A way in which a switch can be set.</summary>
/// <param name="By">What it reserves by; null for the way it comes.</param>
/// <param name="Limits">True when each port gets the least limit that serves what hangs on it.</param>
internal sealed record SettingChoice(ReservesBy? By, bool Limits)
{
    /// <summary>The setting without limits of single ports.</summary>
    public PowerSetting Setting => By is null ? PowerSetting.Silent : PowerSetting.Silent with { ReservesBy = By };

    /// <summary>The ways of a model: as it comes first, since that is the least work.</summary>
    public static IEnumerable<SettingChoice> Of(SwitchModel model)
    {
        yield return new(null, false);
        if (!model.Ports.Any(group => group.Poe is not null))
            yield break;
        foreach (var by in model.SettingsOffered.Where(by => by != model.Setting.ReservesBy && by != ReservesBy.PortLimit))
            yield return new(by, false);
        if (model.SettingsOffered.Contains(ReservesBy.PortLimit))
            yield return new(null, true);
    }
}
