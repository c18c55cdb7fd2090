using Headroom.Documents.Drawings;

namespace Headroom.Documents.Tests.Drawings;

public sealed class TurningTests
{
    [Theory]
    [InlineData("Up: above 17.3 W 1 redshank, 1 holm, 1388.00.")]
    [InlineData("Down: no change to 1.3 W.")]
    [InlineData("Down: below 38.4 dB(A) no design keeps every reserve.")]
    [InlineData("Up: no change to 70 dB(A) (not proved).")]
    // Stopped on the way is not the same as impossible.
    [InlineData("Up: above 22.5 min it was not worked out to the end.")]
    public void A_ruler_says_what_was_found_and_no_more(string sentence) => Assert.Contains(
        Recorder.Of(DrawingList.Find("turning")!.Draw(DrawingInputs.Of("planned"), "")!).Texts, text => text.Text == sentence);

    [Fact]
    public void A_design_of_which_the_sound_is_not_known_stands_in_the_list_only()
    {
        var texts = Recorder.Of(DrawingList.Find("front")!.Draw(DrawingInputs.Of("planned"), "")!).Texts.Select(text => text.Text).ToList();
        Assert.Equal(2, texts.Count(text => text == "5"));
        Assert.Single(texts, text => text == "6");
        Assert.Contains("?", texts);
    }
}
