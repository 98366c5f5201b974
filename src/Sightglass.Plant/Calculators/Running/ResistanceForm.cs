using Sightglass.Book.Model;
using Sightglass.Network.Laws.Motion;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>
/// A formula of train resistance on straight and level track in the unit in which the trade prints it, pounds for each short ton: a + b/w + c·V + d·A·V²/(w·n), with w short tons an axle, n axles,
/// V miles an hour, A square feet of front. Real vehicles scatter by a fifth and more, and wind is left out.
/// </summary>
/// <param name="Constant">a.</param>
/// <param name="PerAxle">b.</param>
/// <param name="PerSpeed">c.</param>
/// <param name="PerArea">d; where the form has one number for the whole front, that with an area of 1.</param>
public sealed record ResistanceForm(double Constant, double PerAxle, double PerSpeed, double PerArea)
{
    private const double Pound = 4.4482216152605;
    private const double ShortTon = 2000 * 0.45359237;
    private const double MileAnHour = 0.44704;

    /// <summary>Davis 1926, passenger cars (coefficients from memory: Hay, Railroad Engineering, 2nd ed.).</summary>
    public static ResistanceForm Passenger1926 => new(1.3, 29, 0.03, 0.00034);

    /// <summary>Davis 1926, locomotives (from memory, as above).</summary>
    public static ResistanceForm Locomotive1926 => new(1.3, 29, 0.03, 0.0024);

    /// <summary>Davis 1926, freight cars (form partly read in a quotation of a car cyclopedia).</summary>
    public static ResistanceForm Freight1926 => new(1.3, 29, 0.045, 0.0005);

    /// <summary>The modified form of the American Railway Engineering Association; K, read in lecture notes: 0.07 conventional, 0.0935 containers, 0.16 trailers on flat cars. The polynomial from memory.</summary>
    public static ResistanceForm Modified(double k = 0.07) => new(0.6, 20, 0.01, k);

    /// <summary>The Canadian form, AREMA ch. 16 (from memory): 1.5 + 18·n/W + 0.03·V + C·a·V²/(10,000·W). Its C for coaches is a number to be given, not one to rely on.</summary>
    public static ResistanceForm Canadian(double c) => new(1.5, 18, 0.03, c / 10_000);

    /// <summary>As a book says it of a vehicle.</summary>
    public static ResistanceForm Of(RunningResistance resistance)
    {
        ArgumentNullException.ThrowIfNull(resistance);
        return resistance.Form switch
        {
            "passenger 1926" => Passenger1926,
            "locomotive 1926" => Locomotive1926,
            "freight 1926" => Freight1926,
            RunningResistance.Modified => Modified(),
            _ => new(resistance.Own[0], resistance.Own[1], resistance.Own[2], resistance.Own[3]),
        };
    }

    /// <summary>lb for each short ton.</summary>
    /// <param name="tonsPerAxle">w, above 0.</param>
    /// <param name="axles">n, 1 or more.</param>
    /// <param name="milesAnHour">V, 0 or more.</param>
    /// <param name="squareFeet">A; 1 where the form has its own number for the front.</param>
    public double PoundsPerTon(double tonsPerAxle, int axles, double milesAnHour, double squareFeet = 1)
    {
        double[] k = PerTon(tonsPerAxle, axles, squareFeet);
        return SpeedResistance.Newtons(k, milesAnHour);
    }

    /// <summary>lb of a whole vehicle.</summary>
    public double Pounds(double tonsPerAxle, int axles, double milesAnHour, double squareFeet = 1) => PoundsPerTon(tonsPerAxle, axles, milesAnHour, squareFeet) * tonsPerAxle * axles;

    /// <summary>The same vehicle as a sheet of the network's law: N, N·s/m, N·s²/m².</summary>
    /// <param name="kilograms">Of the whole vehicle.</param>
    /// <param name="squareMetres">Of its front; null where the form has its own number.</param>
    public double[] Sheet(double kilograms, int axles, double? squareMetres = null)
    {
        double tons = kilograms / ShortTon;
        double[] k = PerTon(tons / axles, axles, squareMetres is { } a ? a / (0.3048 * 0.3048) : 1);
        double newtons = Pound * tons;
        return SpeedResistance.ParametersOf(k[0] * newtons, k[1] * newtons / MileAnHour, k[2] * newtons / (MileAnHour * MileAnHour));
    }

    private double[] PerTon(double tonsPerAxle, int axles, double squareFeet) =>
        SpeedResistance.ParametersOf(Constant + (PerAxle / tonsPerAxle), PerSpeed, PerArea * squareFeet / (tonsPerAxle * axles));
}
