using Headroom.Documents.Papers;

namespace Headroom.Documents.Tests.Papers;

public sealed class WrittenTests
{
    [Theory]
    [InlineData("what does line give, down and up? its contract says; write 'lines'", "What does line give, down and up? Its contract says.")]
    [InlineData("how wide is the round opening of one fan of sw-1? write 'opening' of its 'air'", "How wide is the round opening of one fan of sw-1?")]
    [InlineData("what lies in tray already? count the cables and measure one, or write 'already: none'", "What lies in tray already? Count the cables and measure one.")]
    [InlineData("which range of addresses may this site use? ask whoever runs the rest of the network, and write 'from'", "Which range of addresses may this site use? Ask whoever runs the rest of the network.")]
    [InlineData("how long is K-15", "How long is K-15?")]
    public void A_question_on_paper_says_nothing_of_the_job_file(string question, string asked) => Assert.Equal(asked, Written.Asked(question));

    [Theory]
    [InlineData("examples/barn-vets/job.yaml:45:58, the telephone is answered here", "the telephone is answered here")]
    [InlineData("declared (catalogue/batteries.yaml:14:17)", "declared")]
    [InlineData("examples/barn-vets/job.yaml:161:78", "as written")]
    [InlineData("this study, power", "this study, power")]
    public void An_origin_on_paper_says_nothing_of_files(string origin, string told) => Assert.Equal(told, Written.Origin(origin));
}
