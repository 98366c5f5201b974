using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Sightglass.Web.Host;

/// <summary>Whatever a browser does is answered in the language of its open page, also when its connection is made anew after another one was chosen.</summary>
/// <param name="page">Told by the page's outermost part.</param>
internal sealed class SpeakingCircuit(PageTongue page) : CircuitHandler
{
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) => async context =>
    {
        using IDisposable speaking = page.Tongue.Speak();
        await next(context);
    };
}
