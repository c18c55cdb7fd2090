using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>What a firm charges everywhere, as read from its own file; a job that says otherwise wins.</summary>
public sealed class FirmRates
{
    /// <summary>Keeps what was read.</summary>
    internal FirmRates(YamlMap offer) => Offer = offer;

    /// <summary>The keys of an offer, as written.</summary>
    internal YamlMap Offer { get; }
}
