using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Says what a drill is about.</summary>
internal static class TopicWords
{
    /// <summary><c>Aft compartment</c>, <c>Main reservoir: pressure</c>; an instrument by its own name.</summary>
    public static string Name(DrillTopic topic)
    {
        int of = topic.Name.IndexOf(" of ", StringComparison.Ordinal);
        return topic.IsFill || !topic.IsTruth || of < 0 ? Say.Begin(Say.Book(topic.Item)) : Say.Begin(Say.With($"{topic.Item}: {Say.Word(topic.Name[..of])}"));
    }

    /// <summary>A value with its unit, as fine as is worth reading.</summary>
    public static string Value(DrillTopic topic, double si) => QuantityFormat.Text(si, topic.Unit, topic.Resolution);
}
