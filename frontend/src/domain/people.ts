/** People by the name they are called by; with their initials where two of those listed are called alike. */
interface Named {
  id: string;
  first_name: string;
  initials: string;
}

export function calledBy(people: readonly Named[]): (one: Named) => string {
  const plain = (name: string): string => name.trim().toLocaleLowerCase();
  const alike = (one: Named): boolean => people.some((other) => other.id !== one.id && plain(other.first_name) === plain(one.first_name));
  return (one) => (alike(one) ? `${one.first_name.trim()} ${one.initials}` : one.first_name);
}
