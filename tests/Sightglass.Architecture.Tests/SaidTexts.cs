using System.Collections.Frozen;
using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;

namespace Sightglass.Architecture.Tests;

/// <summary>
/// The texts that a built assembly says to people, read from the instructions of its methods: the literals that go into <c>Say</c>, and every text with gaps
/// that is not made for programs, whoever says it. The markup of pages is compiled too, and so are the texts that stand in it.
/// </summary>
internal sealed partial class SaidTexts
{
    private static readonly FrozenDictionary<int, OpCode> s_codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToFrozenDictionary(c => c.Value & 0xFFFF);

    private readonly MetadataReader _metadata;
    private readonly SortedSet<string> _keys = new(StringComparer.Ordinal);
    private readonly List<string> _unclear = [];

    private SaidTexts(string project, string path)
    {
        Project = project;
        using PEReader file = new(File.OpenRead(path));
        _metadata = file.GetMetadataReader();
        foreach (MethodDefinitionHandle handle in _metadata.MethodDefinitions)
        {
            MethodDefinition method = _metadata.GetMethodDefinition(handle);
            if (method.RelativeVirtualAddress != 0)
            {
                ReadMethod(method, file.GetMethodBody(method.RelativeVirtualAddress).GetILReader());
            }
        }
    }

    /// <summary>Such as <c>Sightglass.Web</c>.</summary>
    public string Project { get; }

    /// <summary>The keys: a text as <c>Go to {0}.</c>, or <c>where|text</c>.</summary>
    public IReadOnlySet<string> Keys => _keys;

    /// <summary>Methods that hand something else than a literal to <c>Say.It</c> or <c>Say.As</c>.</summary>
    public IReadOnlyList<string> Unclear => _unclear;

    /// <summary>Of the projects under src but that in which <c>Say</c> itself stands, built in the same configuration as this test.</summary>
    public static IReadOnlyList<SaidTexts> OfSources() => [.. CompiledAssembly.PathsOfSources().Where(p => p.Name != "Sightglass.Basics").Select(p => new SaidTexts(p.Name, p.Path))];

    /// <summary>The gaps of a text, as <c>{0}</c> and <c>{1:0.0}</c>, in order of their numbers; braces that stand doubled are none.</summary>
    public static IEnumerable<string> GapsOf(string text) => Gap().Matches(text.Replace("{{", "", StringComparison.Ordinal).Replace("}}", "", StringComparison.Ordinal)).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal);

    private static bool HasWords(string text) => Gap().Replace(text, "").Any(char.IsLetter);

    private void ReadMethod(MethodDefinition method, BlobReader body)
    {
        List<string> literals = []; // that lie on the stack right now, as far as nothing else has been put there since
        Stack<string> formats = new(); // of texts with gaps whose gaps are being filled
        List<string> made = []; // texts with gaps, but those that are only numbers for a program
        string? perhaps = null; // a literal behind which only a number has come
        while (body.RemainingBytes > 0)
        {
            OpCode code = Next(ref body);
            if (code == OpCodes.Ldstr)
            {
                perhaps = _metadata.GetUserString(MetadataTokens.UserStringHandle(body.ReadInt32() & 0xFFFFFF));
                literals.Add(perhaps);
                continue;
            }

            int argument = Skip(ref body, code);
            if (code.OperandType == OperandType.InlineMethod)
            {
                Call(method, NameOf(argument), literals, formats, made, perhaps);
            }
            else if (code == OpCodes.Newarr && perhaps is not null && IsObject(MetadataTokens.EntityHandle(argument)))
            {
                formats.Push(perhaps);
            }

            if (!IsNumber(code))
            {
                literals.Clear();
                perhaps = null;
            }
        }

        _keys.UnionWith(made.Where(HasWords));
    }

    private void Call(MethodDefinition method, string called, List<string> literals, Stack<string> formats, List<string> made, string? perhaps)
    {
        switch (called)
        {
            case "System.Array.Empty" when perhaps is not null:
                formats.Push(perhaps);
                break;
            case "System.Runtime.CompilerServices.FormattableStringFactory.Create" when formats.Count > 0:
                made.Add(formats.Pop());
                break;
            case "System.String.Format" when formats.Count > 0:
                formats.Pop();
                break;
            case "System.FormattableString.Invariant" when made.Count > 0:
                made.RemoveAt(made.Count - 1);
                break;
            case "Sightglass.Basics.Language.Say.It" when literals.Count > 0:
                _keys.Add(literals[^1]);
                break;
            case "Sightglass.Basics.Language.Say.As" when literals.Count > 1:
                _keys.Add($"{literals[^2]}|{literals[^1]}");
                break;
            case "Sightglass.Basics.Language.Say.It" or "Sightglass.Basics.Language.Say.As":
                _unclear.Add($"{Project}: {_metadata.GetString(_metadata.GetTypeDefinition(method.GetDeclaringType()).Name)}.{_metadata.GetString(method.Name)}");
                break;
        }
    }

    private string NameOf(int token)
    {
        EntityHandle handle = MetadataTokens.EntityHandle(token);
        if (handle.Kind == HandleKind.MethodSpecification)
        {
            handle = _metadata.GetMethodSpecification((MethodSpecificationHandle)handle).Method;
        }

        if (handle.Kind != HandleKind.MemberReference || _metadata.GetMemberReference((MemberReferenceHandle)handle) is not { Parent.Kind: HandleKind.TypeReference } member)
        {
            return "";
        }

        TypeReference type = _metadata.GetTypeReference((TypeReferenceHandle)member.Parent);
        return $"{_metadata.GetString(type.Namespace)}.{_metadata.GetString(type.Name)}.{_metadata.GetString(member.Name)}";
    }

    private bool IsObject(EntityHandle type) =>
        type.Kind == HandleKind.TypeReference && _metadata.GetTypeReference((TypeReferenceHandle)type) is var named && _metadata.StringComparer.Equals(named.Name, "Object");

    private static OpCode Next(ref BlobReader body)
    {
        int value = body.ReadByte();
        return s_codes[value == 0xFE ? (value << 8) | body.ReadByte() : value];
    }

    /// <summary>Reads what belongs to an instruction.</summary>
    /// <returns>The token of what it names; 0 where it names nothing.</returns>
    private static int Skip(ref BlobReader body, OpCode code)
    {
        switch (code.OperandType)
        {
            case OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok or OperandType.InlineSig:
                return body.ReadInt32();
            case OperandType.InlineSwitch:
                int ways = body.ReadInt32();
                body.Offset += 4 * ways;
                break;
            case OperandType.InlineI8 or OperandType.InlineR:
                body.Offset += 8;
                break;
            case OperandType.InlineBrTarget or OperandType.InlineI or OperandType.ShortInlineR:
                body.Offset += 4;
                break;
            case OperandType.InlineVar:
                body.Offset += 2;
                break;
            case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                body.Offset += 1;
                break;
        }

        return 0;
    }

    private static bool IsNumber(OpCode code) => code.Name!.StartsWith("ldc.i4", StringComparison.Ordinal);

    [GeneratedRegex(@"\{[0-9]+(?:,-?[0-9]+)?(?::[^}]*)?\}")]
    private static partial Regex Gap();
}
