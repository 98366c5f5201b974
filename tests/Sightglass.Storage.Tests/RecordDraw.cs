using System.Reflection;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Sightglass.Storage.Tests;

/// <summary>A record of any sort with something in each of its fields.</summary>
internal static class RecordDraw
{
    /// <param name="type">Which sort.</param>
    /// <param name="kept">Records that it may point at.</param>
    public static object One(IEntityType type, IReadOnlyList<object> kept)
    {
        object one = Activator.CreateInstance(type.ClrType)!;
        foreach (IProperty property in type.GetProperties())
        {
            object? target = property.GetContainingForeignKeys().Select(k => kept.Single(o => o.GetType() == k.PrincipalEntityType.ClrType)).FirstOrDefault();
            property.PropertyInfo!.SetValue(one, target is null ? Value(property.Name, Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType) : IdOf(target));
        }

        return one;
    }

    private static object IdOf(object record) => record.GetType().GetProperty("Id", BindingFlags.Public | BindingFlags.Instance)!.GetValue(record)!;

    private static object Value(string name, Type type) =>
        type == typeof(string) ? $"{name}: “ä\n\0\u4e09’ --; DROP"
        : type == typeof(Guid) ? Guid.NewGuid()
        : type == typeof(int) ? int.MaxValue
        : type == typeof(bool) ? true
        : type == typeof(DateOnly) ? new DateOnly(2028, 2, 29)
        : type == typeof(DateTimeOffset) ? new DateTimeOffset(2028, 2, 29, 23, 59, 59, TimeSpan.Zero).AddTicks(1234567)
        : type.IsEnum ? Enum.GetValues(type).GetValue(Enum.GetValues(type).Length - 1)!
        : throw new NotSupportedException($"{name} is a {type.Name}: say what it may hold");
}
