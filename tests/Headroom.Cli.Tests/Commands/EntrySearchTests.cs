using Headroom.Cli.Commands;
using Headroom.Cli.Tests.Sample;

namespace Headroom.Cli.Tests.Commands;

public sealed class EntrySearchTests
{
    [Theory]
    [InlineData("power/sw-1/restart", "power/sw-1/restart")]
    [InlineData("sw-1/restart", "power/sw-1/restart")]
    [InlineData("restart", "power/sw-1/restart")]
    [InlineData("SW-1/Restart", "power/sw-1/restart")]
    [InlineData("K-17", "power/K-17/volts")]
    [InlineData("estar", "power/sw-1/restart")]
    [InlineData("sw-2/heat", "power/sw-2/heat")]
    [InlineData("K-2", null)]
    [InlineData("volts", null)]
    [InlineData("power/sw-1/restrat", null)]
    public void An_id_is_found_by_itself_its_end_or_a_part_that_no_other_has(string word, string? id) =>
        Assert.Equal(id, EntrySearch.Find(SampleLedger.Full, word).Id);

    [Fact]
    public void A_part_that_several_have_lists_them() => Assert.Equal(
        "headroom: 'volts' may be any of 2:\n  power/K-18/volts\n  power/K-17/volts", EntrySearch.Find(SampleLedger.Full, "volts").Complaint);

    [Theory]
    [InlineData("K-17", "cabling/K-17/length cabling/K-17/loop power/K-17/volts")]
    [InlineData("cabling/k-17", "cabling/K-17/length cabling/K-17/loop")]
    [InlineData("length", "")]
    public void A_thing_stands_for_all_of_it_where_many_are_wanted(string word, string ids)
    {
        var entry = SampleLedger.Full.Entries[0];
        var ledger = SampleLedger.Full with { Figures = [], Entries = [.. new[] { "cabling/K-17/length", "cabling/K-17/loop", "power/K-17/volts", "cabling/K-18/length" }.Select(id => entry with { Id = id })] };
        Assert.Equal(ids, string.Join(' ', EntrySearch.Find(ledger, word, many: true).Ids));
        Assert.StartsWith($"headroom: '{word}' may be any of", EntrySearch.Find(ledger, word).Complaint, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_matches_are_listed_up_to_a_dozen() =>
        Assert.EndsWith("\n  power/K-31/amperes\n  and 8 more", EntrySearch.Find(SampleLedger.Full, "amperes").Complaint, StringComparison.Ordinal);

    [Theory]
    [InlineData("power/sw-1/restrat", "headroom: there is no entry 'power/sw-1/restrat'; did you mean power/sw-1/restart?")]
    [InlineData("sw-1/restrat", "headroom: there is no entry 'sw-1/restrat'; did you mean sw-1/restart?")]
    [InlineData("nothing/at/all/like/it", "headroom: there is no entry 'nothing/at/all/like/it'; the design has 29 entries and figures, which study --format csv lists")]
    public void A_word_that_none_has_gets_advice(string word, string complaint) => Assert.Equal(complaint, EntrySearch.Find(SampleLedger.Full, word).Complaint);

    [Fact]
    public void A_word_that_only_the_sentences_have_leads_to_their_entries() => Assert.Equal(
        "headroom: no entry is named 'ap-5', but it is spoken of in\n  power/sw-1/restart", EntrySearch.Find(SampleLedger.Full, "ap-5").Complaint);
}
