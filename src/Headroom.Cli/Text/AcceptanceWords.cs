using Headroom.Engineering.Acceptance;

namespace Headroom.Cli.Text;

/// <summary>The words for how drops stand.</summary>
internal static class AcceptanceWords
{
    /// <summary>A standing as a word.</summary>
    public static string Of(DropStanding standing) => standing switch
    {
        DropStanding.Accepted => "accepted",
        DropStanding.Marginal => "marginal",
        _ => "open",
    };

    /// <summary>A reason as a word for programs; empty where there is none.</summary>
    public static string Of(OpenReason reason) => reason switch
    {
        OpenReason.Missing => "missing",
        OpenReason.Failed => "failed",
        OpenReason.WrongLimit => "wrong-limit",
        OpenReason.ChannelForLink => "channel-for-link",
        OpenReason.TooLong => "too-long",
        OpenReason.Twin => "twin",
        _ => "",
    };
}
