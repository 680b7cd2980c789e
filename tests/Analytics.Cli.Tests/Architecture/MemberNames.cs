using System.Collections.Immutable;
using System.Reflection.Metadata;

namespace Analytics.Cli.Tests.Architecture;

/// <summary>Turns handles of methods into readable names.</summary>
internal sealed class MemberNames(MetadataReader metadata) : ISignatureTypeProvider<string, object?>
{
    /// <summary>The method behind a handle; null for a field or a call through a pointer.</summary>
    public UsedMember? Of(EntityHandle handle) => handle.Kind switch
    {
        HandleKind.MemberReference => Of((MemberReferenceHandle)handle),
        HandleKind.MethodDefinition => Of((MethodDefinitionHandle)handle),
        HandleKind.MethodSpecification => Of(metadata.GetMethodSpecification((MethodSpecificationHandle)handle)),
        _ => null,
    };

    /// <summary>The method behind a member reference; null for a field.</summary>
    public UsedMember? Of(MemberReferenceHandle handle)
    {
        var member = metadata.GetMemberReference(handle);
        return member.GetKind() == MemberReferenceKind.Method
            ? new(Type(member.Parent), metadata.GetString(member.Name), string.Join(", ", member.DecodeMethodSignature(this, null).ParameterTypes))
            : null;
    }

    private UsedMember Of(MethodDefinitionHandle handle)
    {
        var method = metadata.GetMethodDefinition(handle);
        return new(Type(method.GetDeclaringType()), metadata.GetString(method.Name), string.Join(", ", method.DecodeSignature(this, null).ParameterTypes));
    }

    private UsedMember? Of(MethodSpecification method)
        => Of(method.Method) is { } open ? open with { Name = $"{open.Name}<{string.Join(", ", method.DecodeSignature(this, null))}>" } : null;

    private string Type(EntityHandle handle) => handle.Kind switch
    {
        HandleKind.TypeReference => GetTypeFromReference(metadata, (TypeReferenceHandle)handle, 0),
        HandleKind.TypeDefinition => GetTypeFromDefinition(metadata, (TypeDefinitionHandle)handle, 0),
        HandleKind.TypeSpecification => metadata.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, null),
        _ => "",
    };

    public string GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind)
    {
        var type = reader.GetTypeReference(handle);
        var name = reader.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? $"{GetTypeFromReference(reader, (TypeReferenceHandle)type.ResolutionScope, 0)}.{name}"
            : $"{reader.GetString(type.Namespace)}.{name}";
    }

    public string GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind)
    {
        var type = reader.GetTypeDefinition(handle);
        var name = reader.GetString(type.Name);
        return type.GetDeclaringType() is { IsNil: false } outer ? $"{GetTypeFromDefinition(reader, outer, 0)}.{name}" : $"{reader.GetString(type.Namespace)}.{name}";
    }

    public string GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) => Type(handle);

    public string GetGenericInstantiation(string genericType, ImmutableArray<string> typeArguments) => $"{genericType}<{string.Join(", ", typeArguments)}>";

    public string GetPrimitiveType(PrimitiveTypeCode typeCode) => typeCode.ToString();

    public string GetArrayType(string elementType, ArrayShape shape) => elementType + "[,]";

    public string GetSZArrayType(string elementType) => elementType + "[]";

    public string GetByReferenceType(string elementType) => elementType + "&";

    public string GetPointerType(string elementType) => elementType + "*";

    public string GetFunctionPointerType(MethodSignature<string> signature) => "delegate*";

    public string GetGenericMethodParameter(object? genericContext, int index) => "!!" + index.ToString(System.Globalization.CultureInfo.InvariantCulture);

    public string GetGenericTypeParameter(object? genericContext, int index) => "!" + index.ToString(System.Globalization.CultureInfo.InvariantCulture);

    public string GetModifiedType(string modifier, string unmodifiedType, bool isRequired) => unmodifiedType;

    public string GetPinnedType(string elementType) => elementType;
}
