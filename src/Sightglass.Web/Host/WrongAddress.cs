using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Sightglass.Web.Room;
using Sightglass.Web.Share;

namespace Sightglass.Web.Host;

/// <summary>Whoever follows a wrong address on this computer is told so on a page that leads back; phones and scripts get the bare answer.</summary>
internal static class WrongAddress
{
    public static void Use(WebApplication app)
    {
        app.UseStatusCodePagesWithReExecute("/not-here", createScopeForStatusCodePages: true);
        app.Use((context, next) =>
        {
            bool reads = HttpMethods.IsGet(context.Request.Method) && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal);
            if (context.Features.Get<IStatusCodePagesFeature>() is { } told && (!reads || context.Features.Get<SharedLine>() is not null || RoomDoor.IsRoom(context)))
            {
                told.Enabled = false;
            }

            return next();
        });
    }
}
