using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>Where a route asks most of a train that pulls: grade and curves together, as the mean over its length.</summary>
/// <param name="Metres">Of its head, from the start of the route.</param>
/// <param name="Share">Force along the rail for each unit of weight, curves by the rule; 0 where nothing rises.</param>
/// <param name="Adhesion">The least under it there, without sand.</param>
/// <param name="Sanded">The same with sand.</param>
public readonly record struct RulingGrade(double Metres, double Share, double Adhesion, double Sanded)
{
    /// <summary>m between two looks.</summary>
    private const double Every = 25;

    public static RulingGrade Of(ImmutableArray<RouteStretch> stretches, double train)
    {
        RouteProfile route = new(stretches, train);
        RulingGrade ruling = new(0, 0, stretches[0].Adhesion, stretches[0].Sanded);
        for (double x = Every; x <= route.Length; x += Every)
        {
            (double grade, double curve) = route.ShareAt(x);
            if (grade + curve > ruling.Share)
            {
                RouteStretch here = route.At(x);
                ruling = new(x, grade + curve, here.Adhesion, here.Sanded);
            }
        }

        return ruling;
    }
}
