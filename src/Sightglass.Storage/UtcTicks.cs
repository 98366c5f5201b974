using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Sightglass.Storage;

/// <summary>An instant as a number, 100 ns since year 1, so that the database can order by it.</summary>
internal sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(t => t.UtcTicks, ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
