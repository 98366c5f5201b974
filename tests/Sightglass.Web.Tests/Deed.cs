using Sightglass.Web.Live;
using Sightglass.World;

namespace Sightglass.Web.Tests;

/// <summary>A stretch at a pace, three looks long, and something done at its end.</summary>
internal sealed record Deed(Pace Pace, double Seconds, WorldAction? Action);
