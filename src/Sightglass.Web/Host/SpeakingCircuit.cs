using Microsoft.AspNetCore.Components.Server.Circuits;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Host;

/// <summary>A page that is alive goes on in the language in which it was opened, also when its connection is made anew after another one was chosen.</summary>
internal sealed class SpeakingCircuit : CircuitHandler
{
    private readonly Tongue _tongue = Tongue.Spoken;

    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(Func<CircuitInboundActivityContext, Task> next) => async context =>
    {
        using IDisposable speaking = _tongue.Speak();
        await next(context);
    };
}
