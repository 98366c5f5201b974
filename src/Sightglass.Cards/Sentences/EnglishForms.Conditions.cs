namespace Sightglass.Cards.Sentences;

/// <summary>What can be found true, in English.</summary>
public static partial class EnglishForms
{
    private static IEnumerable<SentenceForm> Conditions() =>
    [
        new(Operation.ShowsAtLeast, FormPlace.Condition, "{item} shows at least {value}"),
        new(Operation.ShowsAtLeast, FormPlace.Condition, "{item} shows {value} or more"),
        new(Operation.ShowsAtMost, FormPlace.Condition, "{item} shows at most {value}"),
        new(Operation.ShowsAtMost, FormPlace.Condition, "{item} shows {value} or less"),
        new(Operation.ShowsMoreThan, FormPlace.Condition, "{item} shows more than {value}"),
        new(Operation.ShowsMoreThan, FormPlace.Condition, "{item} shows over {value}"),
        new(Operation.ShowsLessThan, FormPlace.Condition, "{item} shows less than {value}"),
        new(Operation.ShowsLessThan, FormPlace.Condition, "{item} shows under {value}"),
        new(Operation.ShowsExactly, FormPlace.Condition, "{item} shows {value}"),
        new(Operation.ShowsWord, FormPlace.Condition, "{item} shows {word:scale word}"),
        new(Operation.ShowsNotWord, FormPlace.Condition, "{item} does not show {word:scale word}"),
        new(Operation.IsAtLeast, FormPlace.Condition, "{calculation} is at least {value}"),
        new(Operation.IsAtMost, FormPlace.Condition, "{calculation} is at most {value}"),
        new(Operation.IsMoreThan, FormPlace.Condition, "{calculation} is more than {value}"),
        new(Operation.IsLessThan, FormPlace.Condition, "{calculation} is less than {value}"),
        new(Operation.IsKnown, FormPlace.Condition, "{calculation} is known"),
        new(Operation.IsLit, FormPlace.Condition, "{item} is lit", position: "lit"),
        new(Operation.IsDark, FormPlace.Condition, "{item} is dark", position: "dark"),
        new(Operation.PositionIs, FormPlace.Condition, "{item} is {position}"),
        new(Operation.PositionIsNot, FormPlace.Condition, "{item} is not {position}"),
        new(Operation.NoSign, FormPlace.Condition, "no {sign}"),
        new(Operation.Sign, FormPlace.Condition, "{sign}"),
        new(Operation.IsAtLeast, FormPlace.Fact, "{calculation} is at least {value}"),
        new(Operation.IsAtMost, FormPlace.Fact, "{calculation} is at most {value}"),
        new(Operation.IsMoreThan, FormPlace.Fact, "{calculation} is more than {value}"),
        new(Operation.IsLessThan, FormPlace.Fact, "{calculation} is less than {value}"),
        new(Operation.IsKnown, FormPlace.Fact, "{calculation} is known"),
        new(Operation.NotFact, FormPlace.Fact, "not {fact}"),
        new(Operation.Fact, FormPlace.Fact, "{fact}"),
    ];
}
