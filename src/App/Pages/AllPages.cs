using Calx.App.Pages.Answers;
using Calx.App.Pages.Classes;
using Calx.App.Pages.Home;
using Calx.App.Pages.Keeping;
using Calx.App.Pages.Learning;
using Calx.App.Pages.Lessons;
using Calx.App.Pages.Live;
using Calx.App.Pages.Marking;
using Calx.App.Pages.Practicals;
using Calx.App.Pages.Series;
using Calx.App.Pages.SignIn;
using Calx.App.Pages.Students;
using Calx.App.Pages.Week;
using Calx.App.Serving;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages;

/// <summary>Every address of the program, a file of them a folder.</summary>
public static class AllPages
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        OwnFiles.Map(routes);
        HomeRoutes.Map(routes);
        PracticalsRoutes.Map(routes);
        LearnedRoutes.Map(routes);
        ClassesRoutes.Map(routes);
        LessonsRoutes.Map(routes);
        MarkingRoutes.Map(routes);
        WeekRoutes.Map(routes);
        LiveRoutes.Map(routes);
        BalancesRoutes.Map(routes);
        RecordsRoutes.Map(routes);
        RoomRoutes.Map(routes);
        SignInRoutes.Map(routes);
        JoinRoutes.Map(routes);
        GroupsRoutes.Map(routes);
        TableRoutes.Map(routes);
        PointsRoutes.Map(routes);
        AnswersRoutes.Map(routes);
    }
}
