using Microsoft.AspNetCore.Builder;

namespace Headroom.Desk.Serving;

/// <summary>All addresses there are.</summary>
internal static class Routes
{
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        OwnFiles.Map(app);
        JobRoutes.Map(app);
        SheetRoutes.Map(app);
        MoveRoutes.Map(app);
        SurveyRoutes.Map(app);
        UnitRoutes.Map(app);
        RecordRoutes.Map(app);
        RevisionRoutes.Map(app);
        WorkRoutes.Map(app);
        YearRoutes.Map(app);
        EnquiryRoutes.Map(app);
        CatalogueRoutes.Map(app);
        app.MapFallback(http => http.Nothing("such page"));
    }
}
