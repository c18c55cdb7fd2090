using System.Globalization;
using Headroom.Engineering.Standby;

namespace Headroom.Desk.Shown;

/// <summary>A moment of the restart.</summary>
/// <param name="When">When, from the mains coming back, as a clock shows it.</param>
/// <param name="Unit">The switch, injector or service it is about.</param>
/// <param name="Text">What happens.</param>
public sealed record RestartLine(string When, string Unit, string Text)
{
    /// <summary>Makes it of an event.</summary>
    /// <param name="one">The event.</param>
    public static RestartLine Of(RestartEvent one)
    {
        var whole = TimeSpan.FromSeconds(Math.Round(one.Seconds));
        var clock = whole.TotalHours < 1
            ? string.Create(CultureInfo.InvariantCulture, $"{whole.Minutes}:{whole.Seconds:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{(int)whole.TotalHours}:{whole.Minutes:00}:{whole.Seconds:00}");
        return new(one.Known ? clock : clock + " or later", one.Unit, one.Text);
    }
}
