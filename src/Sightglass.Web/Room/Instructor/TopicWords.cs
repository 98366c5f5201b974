using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Cards.Story;
using Sightglass.Plant.Plans;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Says what a drill is about.</summary>
internal static class TopicWords
{
    /// <summary><c>Aft compartment</c> where what is in it is meant, <c>Pressure of main reservoir</c>, <c>Battery switch: open</c>; an instrument by its own name.</summary>
    public static string Name(DrillTopic topic) => Say.Begin(
        topic.Fault is { } fault ? Say.With($"fault: {PositionWords.Of(topic.Item, fault)}, {topic.Item}")
        : topic.IsState ? Say.With($"{topic.Item}: {PositionWords.Of(topic.Item, topic.Name[..topic.Name.IndexOf(" of ", StringComparison.Ordinal)])}")
        : topic.IsFill || !topic.IsTruth ? Say.Book(topic.Item)
        : QuantityWords.Of(topic.Name));

    /// <summary>A value with its unit, as fine as is worth reading; of a condition whether it is so.</summary>
    public static string Value(DrillTopic topic, double si) => topic.IsState ? (si >= 0 ? Say.It("yes") : Say.It("no")) : QuantityFormat.Text(si, topic.Unit, topic.Resolution);
}
