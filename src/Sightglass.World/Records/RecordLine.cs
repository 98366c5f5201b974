using System.Text.Json.Serialization;

namespace Sightglass.World.Records;

/// <summary>One further line of a record: something done, a moment that was reached, or the end with its hash.</summary>
/// <param name="At">Ticks of 2⁻²⁰ s since the start.</param>
/// <param name="Do">What was done, or null.</param>
/// <param name="Hash">Of the trajectory up to here: only on the last line of a session that was closed.</param>
public sealed record RecordLine(
    long At,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] WorldAction? Do = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Hash = null);
