using Sightglass.Basics.Language;

namespace Sightglass.World.Runs;

/// <summary>
/// What a run failed of, as people read it. It is kept in English and in names of the book, because cases are counted by it and answers hold it; a gap of a sentence says it.
/// </summary>
/// <param name="Kept">As <see cref="Outcome.Mechanism"/> has it: one of the forms here with its names, or words of the book or the card.</param>
public readonly record struct MechanismWords(string Kept)
{
    internal const string Already = "{0}, already when the card begins";
    internal const string DidNotStay = "the result did not stay so";
    internal const string GoesRound = "the card goes round without taking time";
    internal const string Lacks = "{0} is needed and is missing from the {1}";
    internal const string Locked = "{0} is locked and tagged";
    internal const string MayNotOperate = "{0} may not operate {1}";
    internal const string NeverRead = "{0} was never read";
    internal const string NoEnd = "the card did not come to an end";
    internal const string NoResult = "the result is not there at the end";
    internal const string NotGivenBack = "protection was not given back: {0}";
    internal const string NotPermitted = "{0} was operated without permission of {1}";
    internal const string NotSo = "at the end it is not so that {0}";
    internal const string NoWay = "there is no way to {0}";
    internal const string OutOfReach = "{0} is not within reach";
    internal const string RemovedByAnother = "{0} was removed by somebody who had not set it";
    internal const string WithoutProtection = "{0}, without protection";
    internal const string WouldNotGoOn = "the numbers would not go on";

    private static readonly KeptForms s_forms = new(
        (Already, () => Say.It(Already)),
        (DidNotStay, () => Say.It(DidNotStay)),
        (GoesRound, () => Say.It(GoesRound)),
        (Lacks, () => Say.It(Lacks)),
        (Locked, () => Say.It(Locked)),
        (MayNotOperate, () => Say.It(MayNotOperate)),
        (NeverRead, () => Say.It(NeverRead)),
        (NoEnd, () => Say.It(NoEnd)),
        (NoResult, () => Say.It(NoResult)),
        (NotGivenBack, () => Say.It(NotGivenBack)),
        (NotPermitted, () => Say.It(NotPermitted)),
        (NotSo, () => Say.It(NotSo)),
        (NoWay, () => Say.It(NoWay)),
        (OutOfReach, () => Say.It(OutOfReach)),
        (RemovedByAnother, () => Say.It(RemovedByAnother)),
        (WithoutProtection, () => Say.It(WithoutProtection)),
        (WouldNotGoOn, () => Say.It(WouldNotGoOn)));

    /// <summary>In the language that is spoken.</summary>
    public override string ToString() => s_forms.Find(Kept, n => Say.Book(n)) ?? Say.Book(Kept);
}
