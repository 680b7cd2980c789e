using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace Analytics.Cli.Tests.Architecture;

/// <summary>Walks the instructions of a method body (ECMA-335, partition III) for the methods it calls.</summary>
internal static class IntermediateCode
{
    private static readonly Dictionary<int, OperandType> Operands = typeof(OpCodes).GetFields()
        .Select(f => f.GetValue(null)).OfType<OpCode>().ToDictionary(o => (int)(ushort)o.Value, o => o.OperandType);

    public static IEnumerable<EntityHandle> Calls(MethodBodyBlock body)
    {
        var found = new List<EntityHandle>();
        var il = body.GetILReader();
        while (il.RemainingBytes > 0)
        {
            int code = il.ReadByte();
            if (code == 0xFE) code = 0xFE00 | il.ReadByte();
            switch (Operands[code])
            {
                case OperandType.InlineMethod: found.Add((EntityHandle)MetadataTokens.Handle(il.ReadInt32())); break;
                case OperandType.InlineNone: break;
                case OperandType.InlineSwitch:
                    var targets = il.ReadInt32();
                    il.Offset += 4 * targets;
                    break;
                case OperandType.InlineI8 or OperandType.InlineR: il.Offset += 8; break;
                case OperandType.InlineVar: il.Offset += 2; break;
                case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar: il.Offset += 1; break;
                default: il.Offset += 4; break;
            }
        }
        return found;
    }
}
