using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;

namespace Sightglass.Paper.Papers;

/// <summary>Units in which a run is told: those of the book, ways after its speeds.</summary>
/// <param name="Way">Along the route.</param>
/// <param name="Short">Of stopping distances and heights.</param>
/// <param name="Speed">Of the train.</param>
/// <param name="Volume">Of fuel.</param>
public sealed record HaulUnits(Unit Way, Unit Short, Unit Speed, Unit Volume)
{
    public static HaulUnits Of(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        Unit speed = book.ShownIn.GetValueOrDefault(Dimension.Speed) ?? UnitTable.Get("mph");
        bool isUs = speed.Symbol is "mph" or "ft/s";
        return new(UnitTable.Get(isUs ? "mi" : "km"), UnitTable.Get(isUs ? "ft" : "m"), speed, book.ShownIn.GetValueOrDefault(Dimension.Volume) ?? UnitTable.Get("L"));
    }

    /// <summary>A milepost or a way along the route: <c>12.4 mi</c>.</summary>
    public string Along(double metres) => QuantityFormat.Text(metres, Way, Way.Factor / 10);

    /// <summary>A stopping distance or a height: <c>2 610 ft</c>.</summary>
    public string Near(double metres) => QuantityFormat.Text(metres, Short, Short.Factor * (Short.Factor < 1 ? 10 : 1));

    public string At(double metresASecond) => QuantityFormat.Text(metresASecond, Speed, Speed.Factor);

    public string Fuel(double volume) => QuantityFormat.Text(volume, Volume, Volume.Factor);

    public static string Force(double newtons) => QuantityFormat.Text(newtons, UnitTable.Get("kN"), 1000);

    public static string Power(double watts) => QuantityFormat.Text(watts, UnitTable.Get("kW"), 1000);

    public static string Mass(double kilograms) => QuantityFormat.Text(kilograms, UnitTable.Get("t"), 1000);

    public static string Share(double share) => QuantityFormat.Text(share, UnitTable.Get("%"), 0.0001);

    /// <summary><c>4.2 s</c>.</summary>
    public static string Moment(double seconds) => QuantityFormat.Text(seconds, UnitTable.Get("s"), 0.1);

    /// <summary>Hours, minutes and seconds: <c>1:34:05</c>.</summary>
    public static string Clock(double seconds) => Sightglass.Drawing.Charts.ChartNumber.Clock(seconds);
}
