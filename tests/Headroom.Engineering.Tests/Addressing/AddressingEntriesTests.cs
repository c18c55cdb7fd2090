using System.Text.RegularExpressions;
using Headroom.Domain.Addresses;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Addressing;
using Headroom.Engineering.Tests.Racking;

namespace Headroom.Engineering.Tests.Addressing;

/// <summary>Addresses of small made-up sites, and what holds of all of them.</summary>
public sealed class AddressingEntriesTests
{
    private const string Plan = "from: 10.9.0.0/23, elsewhere: 10.9.0.0/26, growth: 0 %";
    private const string Design = "switches: {sw-1: {model: box, in: closet}}";
    private const string Things = "3 x handset: {near: room}, 2 x eye: {near: room}";

    private static Ledger With(string addresses, string things = Things) => RackJob.Study($"endpoints: {{{things}}}\naddresses: {{{addresses}}}", Design);

    private static string Told(Ledger ledger, string subject, string question = "Which addresses?") => ledger.Answers.Single(answer => answer.Subject == subject && answer.Question == question).Text;

    [Fact]
    public void Subnets_are_as_wide_as_needed_and_keep_clear_of_what_is_used_elsewhere()
    {
        var ledger = With($"{Plan}, subnets: {{phones: {{for: phone}}, eyes: {{for: camera}}, rest: {{for: units, more hosts: 60}}}}");
        Assert.StartsWith("10.9.0.64/29,", Told(ledger, "phones"), StringComparison.Ordinal);
        Assert.StartsWith("10.9.0.72/29,", Told(ledger, "eyes"), StringComparison.Ordinal);
        Assert.StartsWith("10.9.0.128/26,", Told(ledger, "rest"), StringComparison.Ordinal);
        Assert.Equal((62.0, 62.0), (ledger.At("addressing/rest/addresses").Demand, ledger.At("addressing/rest/addresses").Limit));
        Assert.Equal("handset-1 10.9.0.66, handset-2 10.9.0.67, handset-3 10.9.0.68.", Told(ledger, "phones", "Which device has which?"));
    }

    [Fact]
    public void One_room_more_renumbers_nobody()
    {
        const string subnets = "phones: {for: phone, in: room}, eyes: {for: camera}";
        var before = With($"{Plan}, growth: 100 %, subnets: {{{subnets}}}".Replace("growth: 0 %, ", "", StringComparison.Ordinal));
        var after = With($"{Plan}, growth: 100 %, subnets: {{{subnets}, closet: {{for: phone, in: closet}}}}".Replace("growth: 0 %, ", "", StringComparison.Ordinal), Things + ", new-1: {model: handset, near: closet}, eye-9: {model: eye, near: closet}");
        Assert.Equal(Told(before, "phones"), Told(after, "phones"));
        Assert.Equal(Told(before, "phones", "Which device has which?"), Told(after, "phones", "Which device has which?"));
        Assert.StartsWith(Told(before, "eyes", "Which device has which?").TrimEnd('.'), Told(after, "eyes", "Which device has which?"), StringComparison.Ordinal);
        Assert.Contains("new-1", Told(after, "closet", "Which device has which?"), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_place_it_is_short_and_without_a_range_it_is_asked_for()
    {
        Assert.Equal(Verdict.Short, With("from: 10.9.0.0/30, subnets: {phones: {for: phone}}").At("addressing/phones/addresses").Studied);
        Assert.Contains("which range of addresses", With("subnets: {phones: {for: phone}}").At("addressing/phones/addresses").Question, StringComparison.Ordinal);
        Assert.Equal(Verdict.Short, With("subnets: {phones: {for: phone, range: 10.9.0.0/30}}").At("addressing/phones/addresses").Studied);
    }

    [Fact]
    public void A_device_of_no_subnet_is_told() =>
        Assert.Equal(2, With($"{Plan}, subnets: {{phones: {{for: phone}}, rest: {{for: units}}}}").At("addressing/subnets/without").Demand);

    [Fact]
    public void What_is_lent_lies_at_the_end_and_follows_the_visitors()
    {
        // 60 an hour for 54 min, lent for 2 h: 155 addresses (reference, runtime/4.3).
        var ledger = With("from: 10.9.0.0/22, growth: 0 %, six: 'fd4c:12::/48', subnets: {guests: {vlan: 42, visitors: {an hour: 60, stay: 54 min, lease: 2 h}}, rest: {for: [phone, camera, units]}}");
        Assert.Contains("lent out 10.9.0.100 to 10.9.0.254; version 6 fd4c:12:0:2a::/64", Told(ledger, "guests"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{role}-{place}-{number}", "handset-1 (tel-room-01)", 0)]
    [InlineData("{id}", "handset-1 (handset-1)", 0)]
    [InlineData("all_{number}", "handset-1 (all_01)", 8)]
    [InlineData("x-{number}", "handset-1 (x-01)", 2)]
    public void Names_follow_the_firms_own_pattern_and_what_cannot_be_is_told(string pattern, string told, double wrong)
    {
        var ledger = With($"{Plan}, names: \"{pattern}\", subnets: {{phones: {{for: phone}}, rest: {{for: [camera, units]}}}}");
        Assert.Contains(told, Told(ledger, "phones", "Which device has which?"), StringComparison.Ordinal);
        Assert.Equal(wrong, ledger.At("addressing/names/usable").Demand);
    }

    private static readonly Gen<(string Name, long Hosts)[]> Needs = Gen.Int[1, 300].Array[1, 10].Select(hosts => hosts.Select((count, at) => ($"s{at}", (long)count)).ToArray());

    [Fact]
    public void Subnets_lie_in_the_range_meet_nobody_and_are_large_enough() => Needs.Sample(needs =>
    {
        var from = Ip4Range.Read("10.9.0.0/21", out _)!.Value;
        var elsewhere = Ip4Range.Read("10.9.1.0/24", out _)!.Value;
        var room = new SubnetRoom(from);
        room.Keep(elsewhere);
        var placed = room.TakeAll(needs).Where(one => one.Range is not null).Select(one => (one.Name, Range: one.Range!.Value)).ToList();
        Assert.All(placed, one => Assert.True(from.Contains(one.Range) && !one.Range.Overlaps(elsewhere) && one.Range.Hosts >= needs.Single(need => need.Name == one.Name).Hosts));
        Assert.All(placed, one => Assert.DoesNotContain(placed, other => other.Name != one.Name && other.Range.Overlaps(one.Range)));
    });

    [Fact]
    public void A_prefix_is_the_narrowest_that_is_enough() => Gen.Int[0, 100_000].Sample(hosts =>
    {
        var prefix = SubnetSize.PrefixFor(hosts)!.Value;
        Assert.True(new Ip4Range(new Ip4(0), prefix).Hosts >= hosts);
        Assert.True(prefix == 30 || new Ip4Range(new Ip4(0), prefix + 1).Hosts < hosts);
    });

    [Fact]
    public void More_visitors_or_a_longer_lease_never_need_fewer_addresses() => Gen.Select(Gen.Double[0.1, 80], Gen.Double[0.1, 12], Gen.Double[0.1, 24]).Sample((perHour, stay, lease) =>
    {
        int Pool(double visitors) => LeasePool.Needed(LeasePool.Mean(visitors, LeasePool.HeldHours(stay, lease)), LeasePool.Enough);
        Assert.True(Pool(perHour) <= Pool(perHour * 1.5));
        Assert.True(LeasePool.HeldHours(stay, lease) >= Math.Max(stay, lease) - 1e-9);
    });

    [Fact]
    public void Every_entry_says_and_works_itself_out_in_short_words() => Assert.All(
        With($"{Plan}, names: \"x-{{number}}\", subnets: {{phones: {{for: phone}}}}").Entries.Where(e => e.Discipline == "addressing"), entry =>
        {
            Assert.InRange(entry.What.Length, 1, 24);
            Assert.Matches(new Regex("[.]$"), entry.Story.Say(entry));
            Assert.NotEmpty(entry.Story.Work(entry).Steps);
        });
}
