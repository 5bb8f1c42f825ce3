import { describe, expect, it } from "vitest";
import { calledBy } from "./people";

const person = (id: string, first_name: string, initials: string) => ({ id, first_name, initials });

describe("calledBy", () => {
  it("adds initials only to people who are called alike", () => {
    const people = [person("1", "Bram", "BT"), person("2", "bram ", "BH"), person("3", "Jun", "JH")];

    expect(people.map(calledBy(people))).toEqual(["Bram BT", "bram BH", "Jun"]);
  });

  it("does not take one person listed twice for two", () => {
    const one = person("1", "Bram", "BT");

    expect([one, one].map(calledBy([one, one]))).toEqual(["Bram", "Bram"]);
  });
});
