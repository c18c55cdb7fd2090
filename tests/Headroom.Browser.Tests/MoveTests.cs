using Headroom.Store;
using Microsoft.Playwright;

namespace Headroom.Browser.Tests;

/// <summary>Things moved on drawings, by mouse, finger, keys and forms.</summary>
public sealed class MoveTests(Browser browser) : IClassFixture<Browser>
{
    private const string Reception = Visit.Barn + "/drawings/rooms?space=reception";
    private const string Ports = Visit.Barn + "/drawings/ports";
    private const string Desk = "[data-grip='listeners/desk/at']";

    [Theory, InlineData(1240, 1000), InlineData(320, 700)]
    public async Task A_listener_is_dragged_and_saved(int width, int height)
    {
        await using var visit = await browser.Open(width, height);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        var drawn = await page.Locator("[data-live=plan]").InnerHTMLAsync();
        await Drag(page, Desk, 90, -30);
        await Assertions.Expect(Said(page)).ToContainTextAsync("at of desk of listeners:");
        Assert.NotEqual(drawn, await page.Locator("[data-live=plan]").InnerHTMLAsync());
        Assert.NotEqual("2.4", await Field(page, "along of desk, m").InputValueAsync());
        await Assertions.Expect(page.Locator(Desk)).ToBeFocusedAsync();
        var along = await Field(page, "along of desk, m").InputValueAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save as a revision" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Saved as revision 2.");
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync(along);
        Assert.Empty(visit.Said);
    }

    [Fact]
    public async Task While_it_is_dragged_the_drawing_follows_and_a_finger_does_it_too()
    {
        await using var visit = await browser.Open(320, 700, touch: true);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        var drawn = await page.Locator("[data-live=plan]").InnerHTMLAsync();
        var from = await Middle(page, Desk);
        var hand = await visit.Context.NewCDPSessionAsync(page);
        Task Touch(string what, params object[] points) => hand.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = what, ["touchPoints"] = points });
        await Touch("touchStart", new { x = from.X, y = from.Y });
        await Touch("touchMove", new { x = from.X + 30, y = from.Y - 10 });
        await Touch("touchMove", new { x = from.X + 60, y = from.Y - 40 });
        // Nothing is let go yet; the map is that of the place under the finger.
        await page.WaitForFunctionAsync("before => document.querySelector('[data-live=plan]').innerHTML !== before", drawn);
        await Assertions.Expect(Said(page)).ToHaveTextAsync("Nothing is moved.");
        await Touch("touchEnd");
        await Assertions.Expect(Said(page)).ToContainTextAsync("at of desk of listeners:");
        Assert.Empty(visit.Said);
    }

    [Fact]
    public async Task What_is_dragged_out_of_its_room_goes_back_with_the_reason()
    {
        await using var visit = await browser.Open(1240, 1000);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        var place = await page.Locator(Desk).GetAttributeAsync("data-x");
        await Drag(page, Desk, -250, 0);
        await Assertions.Expect(Said(page)).ToContainTextAsync("desk stays where it was: listener desk is at x = -");
        await Assertions.Expect(page.Locator("tr.slip .wrong")).ToContainTextAsync("x lies between 0 and 6.2 m");
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync("2.4");
        Assert.Equal(place, await page.Locator(Desk).GetAttributeAsync("data-x"));
        // A browser tells of every answer that is no page; nothing else is amiss.
        Assert.All(visit.Said, said => Assert.Contains("422", said, StringComparison.Ordinal));
    }

    [Fact]
    public async Task With_keys_alone_a_listener_and_a_wall_are_moved_and_taken_back()
    {
        await using var visit = await browser.Open(1240, 1000);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        for (var tabs = 0; tabs < 60 && !await page.EvaluateAsync<bool>("document.activeElement.matches(\"[data-grip='listeners/desk/at']\")"); tabs++)
            await page.Keyboard.PressAsync("Tab");
        foreach (var key in (string[])["ArrowRight", "ArrowRight", "ArrowUp", "Shift+ArrowRight"])
            await page.Keyboard.PressAsync(key);
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync("3.1");
        await Assertions.Expect(Field(page, "across of desk, m")).ToHaveValueAsync("1.3");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync("2.4");
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("at of desk of listeners: 2.3 x 1.2 x 1.2 m, was 2.4 x 1.2 x 1.2 m");
        await Assertions.Expect(page.Locator(Desk)).ToBeFocusedAsync();
        await page.Locator("[data-grip='spaces/reception/size'][data-across]").FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("size of reception of spaces: 6.7 x 5.1 x 2.8 m");
        // Nothing is pending: Escape takes back what was worked out, step by step.
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(Said(page)).Not.ToContainTextAsync("reception");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(Said(page)).ToHaveTextAsync("Nothing is moved.");
        Assert.Empty(visit.Said);
    }

    [Fact]
    public async Task Without_script_a_place_is_written_worked_out_taken_back_and_saved()
    {
        await using var visit = await browser.Open(390, 800, script: false);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        await page.Locator(Desk).ClickAsync();
        Assert.EndsWith("#thing-1", page.Url, StringComparison.Ordinal);
        await Field(page, "along of desk, m").FillAsync("3");
        await Field(page, "along of desk, m").PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("at of desk of listeners: 3 x 1.2 x 1.2 m");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo the last move" }).ClickAsync();
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync("2.4");
        await Field(page, "along of desk, m").FillAsync("30");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(page.Locator("tr.slip")).ToContainTextAsync("x lies between 0 and 6.2 m");
        await Assertions.Expect(Field(page, "along of desk, m")).ToHaveValueAsync("30");
        await Field(page, "along of desk, m").FillAsync("3.3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save as a revision" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Saved as revision 2.");
    }

    [Fact]
    public async Task A_cord_is_dragged_to_a_free_port_and_swapped_with_the_one_on_a_taken_port()
    {
        await using var visit = await browser.Open(1240, 1200);
        var page = await visit.Begin();
        await page.GotoAsync(Ports);
        await Onto(page, "cord/K-14", "sw-1/23");
        await Assertions.Expect(Said(page)).ToContainTextAsync("K-14 of patch of as-offered of designs: sw-1/23");
        await Onto(page, "cord/K-07", "sw-1/5");
        await Assertions.Expect(Said(page)).ToContainTextAsync("K-07 stays where it was: K-21 (door) is on sw-1/5 already");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Swap K-07 and K-21" })).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("K-21 of patch of as-offered of designs: sw-1/1, was sw-1/5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save as a revision" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Saved as revision 2.");
        using var store = JobStore.Open(new StorePlace(visit.Folder), TimeProvider.System);
        Assert.Contains("K-07: sw-1/5 ", store.Read("cobnut-barn-animal-doctors", 2)!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_keys_alone_a_cord_goes_from_port_to_port_and_a_unit_up_and_down()
    {
        await using var visit = await browser.Open(1240, 1200);
        var page = await visit.Begin();
        await page.GotoAsync(Ports);
        await page.Locator("[data-grip='cord/K-05']").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(Field(page, "port of K-05")).ToHaveValueAsync("sw-1/23");
        await page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(Field(page, "port of K-05")).ToHaveValueAsync("sw-1/21");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("K-05 of patch of as-offered of designs: sw-1/23, was sw-1/21");
        await page.Locator("[data-grip='unit/sw-1']").FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(Field(page, "lowest unit of sw-1, U")).ToHaveValueAsync("8");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("unit of sw-1 of switches of as-offered of designs: 8, was 4");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Said(page)).ToContainTextAsync("sw-1 stays where it was");
        await Assertions.Expect(Field(page, "lowest unit of sw-1, U")).ToHaveValueAsync("8");
    }

    [Fact]
    public async Task Who_leaves_with_moves_that_are_not_saved_is_asked_first()
    {
        await using var visit = await browser.Open(1240, 1000);
        var page = await visit.Begin();
        await page.GotoAsync(Reception);
        await Drag(page, Desk, 60, 0);
        await Assertions.Expect(Said(page)).ToContainTextAsync("at of desk of listeners:");
        var asked = 0;
        page.Dialog += async (_, dialog) =>
        {
            asked++;
            await dialog.AcceptAsync();
        };
        await page.GotoAsync("/");
        Assert.Equal(1, asked);
    }

    [Theory, InlineData(Reception), InlineData(Ports), InlineData(Visit.Barn + "/drawings/restart")]
    public async Task Drawings_print_without_what_is_there_to_move_them(string address)
    {
        await using var visit = await browser.Open();
        var page = await visit.Begin();
        await page.GotoAsync(address);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".grips, form.moves").First).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator("figure.drawing svg").First).ToBeVisibleAsync();
        // No drawing is wider than the paper.
        Assert.True(await page.EvaluateAsync<bool>("[...document.querySelectorAll('figure.drawing .scroll')].every(one => one.scrollWidth <= one.clientWidth + 1)"));
        Assert.True((await page.PdfAsync(new() { Format = "A4" })).Length > 10_000);
    }

    private static ILocator Said(IPage page) => page.Locator("[data-said]");

    private static ILocator Field(IPage page, string name) => page.GetByLabel(name, new() { Exact = true });

    private static async Task<(float X, float Y)> Middle(IPage page, string of)
    {
        await page.Locator(of).ScrollIntoViewIfNeededAsync();
        var box = (await page.Locator(of).BoundingBoxAsync())!;
        return (box.X + box.Width / 2, box.Y + box.Height / 2);
    }

    private static async Task Drag(IPage page, string what, float right, float down)
    {
        var (x, y) = await Middle(page, what);
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + right / 2, y + down / 2);
        await page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 4 });
        await page.Mouse.UpAsync();
    }

    private static async Task Onto(IPage page, string cord, string port)
    {
        var (fromX, fromY) = await Middle(page, $"[data-grip='{cord}']");
        var (toX, toY) = await Middle(page, $"[data-place='{port}']");
        await Drag(page, $"[data-grip='{cord}']", toX - fromX, toY - fromY);
    }
}
