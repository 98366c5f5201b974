using Sightglass.Basics.Language;

namespace Sightglass.Web.Host;

/// <summary>The language of one open page.</summary>
internal sealed class PageTongue
{
    public Tongue Tongue { get; set; } = Tongue.Usual;
}
