// What is surely an array, or has its places and its length as an array has them.

import type ts from 'typescript'

/** Arrays by another name. */
const ARRAYS = new Set(['RegExpExecArray', 'RegExpMatchArray', 'TemplateStringsArray'])
const TYPED = /^(?:Big)?(?:Int|Uint|Float)(?:8|16|32|64)(?:Clamped)?Array$/

export function isArray(type: ts.Type, checker: ts.TypeChecker): boolean {
  if (type.isUnion()) return type.types.every((one) => isArray(one, checker))
  return checker.isArrayType(type) || checker.isTupleType(type) || ARRAYS.has(type.symbol?.name ?? '')
}

export function isList(type: ts.Type, checker: ts.TypeChecker): boolean {
  if (type.isUnion()) return type.types.every((one) => isList(one, checker))
  return isArray(type, checker) || TYPED.test(type.symbol?.name ?? '')
}

export function toElement(list: ts.Type, at: number, checker: ts.TypeChecker): ts.Type {
  const own = list.isUnion() ? undefined : checker.getPropertyOfType(list, String(at))
  return own ? checker.getTypeOfSymbol(own) : (list.getNumberIndexType() ?? checker.getAnyType())
}
