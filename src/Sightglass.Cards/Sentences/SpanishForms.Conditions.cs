namespace Sightglass.Cards.Sentences;

/// <summary>What can be found true, in Spanish.</summary>
public static partial class SpanishForms
{
    private static IEnumerable<SentenceForm> Conditions() =>
    [
        new(Operation.ShowsAtLeast, FormPlace.Condition, "{item} muestra a el menos {value}"),
        new(Operation.ShowsAtLeast, FormPlace.Condition, "{item} muestra {value} o más"),
        new(Operation.ShowsAtMost, FormPlace.Condition, "{item} muestra como máximo {value}"),
        new(Operation.ShowsAtMost, FormPlace.Condition, "{item} muestra {value} o menos"),
        new(Operation.ShowsMoreThan, FormPlace.Condition, "{item} muestra más de {value}"),
        new(Operation.ShowsLessThan, FormPlace.Condition, "{item} muestra menos de {value}"),
        new(Operation.ShowsExactly, FormPlace.Condition, "{item} muestra {value}"),
        new(Operation.ShowsWord, FormPlace.Condition, "{item} muestra {word:scale word}"),
        new(Operation.ShowsNotWord, FormPlace.Condition, "{item} no muestra {word:scale word}"),
        new(Operation.IsAtLeast, FormPlace.Condition, "{calculation} es a el menos {value}"),
        new(Operation.IsAtMost, FormPlace.Condition, "{calculation} es como máximo {value}"),
        new(Operation.IsMoreThan, FormPlace.Condition, "{calculation} es más de {value}"),
        new(Operation.IsLessThan, FormPlace.Condition, "{calculation} es menos de {value}"),
        new(Operation.IsKnown, FormPlace.Condition, "{calculation} se conoce"),
        new(Operation.IsLit, FormPlace.Condition, "{item} luce", position: "lit"),
        new(Operation.IsLit, FormPlace.Condition, "{item} está encendida", position: "lit", hints: FormHints.Kept),
        new(Operation.IsLit, FormPlace.Condition, "{item} está encendido", position: "lit", hints: FormHints.Kept),
        new(Operation.IsDark, FormPlace.Condition, "{item} no luce", position: "dark"),
        new(Operation.IsDark, FormPlace.Condition, "{item} está apagada", position: "dark", hints: FormHints.Kept),
        new(Operation.IsDark, FormPlace.Condition, "{item} está apagado", position: "dark", hints: FormHints.Kept),
        new(Operation.PositionIs, FormPlace.Condition, "{item} está en {position}"),
        new(Operation.PositionIs, FormPlace.Condition, "{item} está {position}", hints: FormHints.Kept),
        new(Operation.PositionIsNot, FormPlace.Condition, "{item} no está en {position}"),
        new(Operation.PositionIsNot, FormPlace.Condition, "{item} no está {position}", hints: FormHints.Kept),
        new(Operation.NoSign, FormPlace.Condition, "no {sign}"),
        new(Operation.Sign, FormPlace.Condition, "{sign}"),
        new(Operation.IsAtLeast, FormPlace.Fact, "{calculation} es a el menos {value}"),
        new(Operation.IsAtMost, FormPlace.Fact, "{calculation} es como máximo {value}"),
        new(Operation.IsMoreThan, FormPlace.Fact, "{calculation} es más de {value}"),
        new(Operation.IsLessThan, FormPlace.Fact, "{calculation} es menos de {value}"),
        new(Operation.IsKnown, FormPlace.Fact, "{calculation} se conoce"),
        new(Operation.NotFact, FormPlace.Fact, "no {fact}"),
        new(Operation.Fact, FormPlace.Fact, "{fact}"),
    ];
}
