using Sightglass.Basics.Language;

namespace Sightglass.Trials.Consists;

/// <summary>What is to be said of the power line of a train.</summary>
internal static class PowerFindings
{
    public static IEnumerable<TrainFinding> Of(TrainCheckResult result)
    {
        if (result.Power is not { IsThere: true } power)
        {
            yield break;
        }

        bool isFed = power.Sources.Any(s => s.Feeds);
        if (!isFed && !power.Loads.IsEmpty)
        {
            yield return new(FindingWeight.Mend, null, () => Say.It("No car has head-end power: as the train stands nothing feeds it. The loop through all plugs and covers is open, or no machine is set up to feed."));
        }

        foreach (LoadReading load in power.Loads)
        {
            CheckedVehicle vehicle = result.Vehicles[load.Load.Vehicle.Index];
            if (load.IsTooHigh)
            {
                yield return new(FindingWeight.Stops, vehicle.Vehicle.Index, () => Say.With($"{Say.Begin(TrainWords.Name(vehicle))}: is made for {TrainWords.Volts(load.Rated)} and gets {TrainWords.Volts(load.Volts)}. It must not be plugged in."));
            }
            else if (isFed && !load.Works)
            {
                yield return new(FindingWeight.Mend, vehicle.Vehicle.Index, () => Say.With($"{Say.Begin(TrainWords.Name(vehicle))}: does not get the voltage that it needs: {TrainWords.Volts(load.Volts)} of {TrainWords.Volts(load.Rated)}."));
            }
        }

        foreach (CurrentReading over in power.Jumpers.Where(j => j.IsOver))
        {
            yield return new(FindingWeight.Mend, over.Item.Vehicle.Index, () => Say.With($"{Say.Begin(Say.Book(over.Item.Name))}: carries {TrainWords.Amperes(over.Amperes)} and stands {TrainWords.Amperes(over.Rated)} for ever. It gets hot."));
        }

        foreach (CurrentReading over in power.Breakers.Where(b => b.IsOver || b.Tripped))
        {
            yield return new(FindingWeight.Mend, over.Item.Vehicle.Index, () => over.Tripped
                ? Say.With($"{Say.Begin(Say.Book(over.Item.Name))}: has opened by itself.")
                : Say.With($"{Say.Begin(Say.Book(over.Item.Name))}: carries {TrainWords.Amperes(over.Amperes)} and is made for {TrainWords.Amperes(over.Rated)}. It will open."));
        }

        foreach (SourceReading over in power.Sources.Where(s => s.IsOver))
        {
            yield return new(FindingWeight.Mend, over.Source.Vehicle.Index, () => Say.With($"{Say.Begin(Say.Book(over.Source.Name))}: gives {TrainWords.Power(over.Watts)} and may give {TrainWords.Power(over.Power)} for ever. Something must be switched off in the cars."));
        }
    }
}
