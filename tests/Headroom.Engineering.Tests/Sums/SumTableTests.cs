using System.Text.RegularExpressions;
using Headroom.Engineering.Sums;

namespace Headroom.Engineering.Tests.Sums;

/// <summary>What holds of every sum, whatever it works out.</summary>
public sealed class SumTableTests
{
    private static readonly Func<Told, string> Shown = told => told.ToString();

    public static TheoryData<string> Names => [.. AllSums.All.Select(sum => sum.Name)];

    [Fact]
    public void Names_are_words_with_hyphens_and_stand_once()
    {
        Assert.Equal(AllSums.All.Count, AllSums.All.Select(sum => sum.Name).Distinct().Count());
        Assert.All(AllSums.All.SelectMany(sum => sum.Inputs.Select(input => input.Name).Append(sum.Name).Concat(sum.Outputs.Select(output => output.Name))),
            name => Assert.Matches(new Regex("^[a-z][a-z0-9]*(-[a-z0-9]+)*$"), name));
    }

    [Theory, MemberData(nameof(Names))]
    public void Inputs_and_outputs_of_a_sum_have_names_of_their_own(string name)
    {
        var sum = AllSums.Find(name)!;
        Assert.Equal(sum.Inputs.Count, sum.Inputs.Select(input => input.Name).Distinct().Count());
        Assert.Equal(sum.Outputs.Count, sum.Outputs.Select(output => output.Name).Distinct().Count());
    }

    [Theory, MemberData(nameof(Names))]
    public void What_is_taken_when_nothing_is_given_is_allowed_and_says_why(string name) => Assert.All(
        AllSums.Find(name)!.Inputs.Where(input => input.Default is not null), input =>
        {
            Assert.NotNull(input.Read(input.Default!, out var problem));
            Assert.Null(problem);
            Assert.NotEqual("", input.DefaultWhy);
        });

    [Theory, MemberData(nameof(Names))]
    public void The_example_of_a_sum_is_worked_out_with_its_figures_working_and_source(string name)
    {
        var sum = AllSums.Find(name)!;
        var reading = SumReader.Read(sum, sum.Example.Split(' '));
        Assert.Empty(reading.Complaints);
        var answer = sum.Work(reading.Given!);
        Assert.All(answer.Figures, figure => Assert.NotNull(figure.Value));
        Assert.Contains(answer.Figures, figure => figure.Output == sum.Outputs[0]);
        Assert.NotEmpty(answer.Steps);
        Assert.NotEqual("", sum.Source);
        Assert.EndsWith(".", Told.In(answer.Say, Shown), StringComparison.Ordinal);
        Assert.Equal(sum.Formula, SumWorking.Of(sum, reading.Given!, answer).Formula);
    }

    [Theory, MemberData(nameof(Names))]
    public void Whatever_is_allowed_is_answered_with_figures_or_with_a_reason(string name)
    {
        var sum = AllSums.Find(name)!;
        Values(sum).Sample(words =>
        {
            var reading = SumReader.Read(sum, words);
            Assert.Empty(reading.Complaints);
            var answer = sum.Work(reading.Given!);
            Assert.All(answer.Figures, figure => Assert.Contains(figure.Output, sum.Outputs));
            // "Cannot" is an answer that says so; a figure that is missing without it would be a hole.
            Assert.True(answer.Holds ? answer.Figures.Any(figure => figure.Value is not null) : Told.In(answer.Say, Shown).Length > 20);
            Assert.DoesNotContain("NaN", Told.In(answer.Say, Shown), StringComparison.Ordinal);
            Assert.DoesNotContain("unknown", Told.In(answer.Say, Shown), StringComparison.Ordinal);
        }, iter: Long.Samples(2000));
    }

    // Something allowed for every input, ends of the ranges included; what may stay away stays away every other time.
    private static Gen<string[]> Values(Sum sum) => Gen.Select(Gen.Double[0, 1].Array[sum.Inputs.Count], Gen.Int[0, 3].Array[sum.Inputs.Count])
        .Select((shares, sorts) => sum.Inputs.SelectMany((input, at) => Words(input, sorts[at] == 0 ? Math.Round(shares[at]) : shares[at], sorts[at])).ToArray());

    private static string[] Words(SumInput input, double share, int sort) => (input, sort) switch
    {
        ({ MustBeGiven: false }, 1) => [],
        (QuantityInput { IsList: true } list, _) => [input.Name, string.Join(", ", Enumerable.Repeat(Written(list, share), list.Count?.Least ?? 1 + sort))],
        (QuantityInput quantity, _) => [input.Name, Written(quantity, share)],
        (NumberInput { OneOf: { Count: > 0 } some }, _) => [input.Name, $"{some[(int)(share * 0.999 * some.Count)]}"],
        (NumberInput number, _) => [input.Name, $"{Math.Round(number.Bounds.Least + share * (number.Bounds.Most - number.Bounds.Least), number.IsWhole ? 0 : 3).ToString(System.Globalization.CultureInfo.InvariantCulture)}"],
        (WordInput words, _) => [input.Name, words.Choices[(int)(share * 0.999 * words.Choices.Count)]],
        _ => throw new NotSupportedException(),
    };

    // Between the ends by ratio where that is possible, so that small values are drawn as often as large ones.
    private static string Written(QuantityInput input, double share)
    {
        var (least, most) = (input.Bounds.Least, input.Bounds.Most);
        var value = share == 0 ? least : share == 1 ? most : least > 0 ? least * Math.Pow(most / least, share) : least + share * (most - least);
        var unit = input.Unit;
        var written = unit.FromBase(value);
        // The ends themselves may lie a last binary digit outside once they are written.
        var rounded = Math.Round(written, 6);
        return FormattableString.Invariant($"{Math.Clamp(rounded, Math.Round(unit.FromBase(least), 6), Math.Round(unit.FromBase(most), 6)):0.######} {unit.Symbol}");
    }
}
