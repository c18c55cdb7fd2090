using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>What a call takes on the line.</summary>
internal static class VoiceOfCall
{
    private static readonly QuantityInput Codec = new("codec", "rate of the coded speech itself", BitsPerSecond.Units, new(2, 1000, "kb/s"));
    private static readonly QuantityInput Packet = new("packet", "speech in one packet", Seconds.Units, new(5, 120, "ms")) { Default = "20 ms", DefaultWhy = "what telephones do unless told otherwise; common practice, no source" };
    private static readonly WordInput Tagged = new("tagged", "whether frames carry a tag", "yes", "no") { Default = "yes", DefaultWhy = "voice mostly has a network of its own" };
    private static readonly WordInput Address = new("addresses", "kind of addresses", "IPv4", "IPv6") { Default = "IPv4", DefaultWhy = "most telephones" };

    private static readonly SumOutput Wire = new("on-wire", "kb/s", "on the wire, preamble and gap included, one way");
    private static readonly SumOutput Frame = new("frame-rate", "kb/s", "as frames, as tables print it, one way");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "voice-rate",
        Discipline = TrafficSums.Discipline,
        Answers = "what does a call take on the line?",
        Inputs = [Codec, Packet, Tagged, Address],
        Outputs = [Wire, Frame],
        Formula = "(payload + 40 or 60 of headers + 18 of frame, 4 of tag, 20 of preamble and gap) · 8 / packet time",
        Source = "RFC 791, 768, 3550, 8200; IEEE 802.3, clause 3 and 4.4.2, from memory",
        Example = "codec 64 kb/s",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var headers = (given.Word(Address) == "IPv6" ? VoiceRate.HeaderOctetsOfSix : VoiceRate.HeaderOctets) + VoiceRate.FrameOctets + (given.Word(Tagged) == "yes" ? 4 : 0);
        var frame = VoiceRate.BitsPerSecond(given[Codec], given[Packet], headers) / 1e3;
        var wire = VoiceRate.BitsPerSecond(given[Codec], given[Packet], headers + FrameRate.OverheadOctets) / 1e3;
        return new SumAnswer(
            $"A call takes {new Told(wire, "kb/s")} of the wire each way.",
            [Wire.Is(wire), Frame.Is(frame)],
            [
                new("speech in a packet", $"{Words.Of(given[Codec] / 1e3)} kb/s · {Words.Of(1000 * given[Packet])} ms / 8", given[Codec] * given[Packet] / 8, "octets"),
                new("as frames", $"with {headers} octets round it", frame, "kb/s"),
                new("on the wire", $"with {headers + FrameRate.OverheadOctets}", wire, "kb/s"),
            ]);
    }
}
