from studio.models import JournalEntry, Member
from studio.permissions import Role
from tests import factories

PATH = "/api/v1/studios/yard/members/"


def changed(client, member, **body):
    return client.patch(f"{PATH}{member.pk}/", body, format="json")


class TestList:
    def test_works(self, studio, owner, maker, helper):
        rows = helper[1].get(PATH).json()["results"]

        assert [row["first_name"] for row in rows] == ["Founder", "Hal", "Maud", "Orla"]
        assert rows[1]["helps"] == [str(maker[0].pk)]

    def test_shows_addresses_to_owners_and_oneself_only(self, studio, owner, maker):
        Member.objects.filter(pk__in=[owner[0].pk, maker[0].pk]).update(email="a@example.org")

        def addresses(client):
            return {row["first_name"]: row["email"] for row in client.get(PATH).json()["results"]}

        assert addresses(maker[1]) == {
            "Founder": None,
            "Maud": "a@example.org",
            "Orla": None,
        }
        assert addresses(owner[1])["Maud"] == "a@example.org"

    def test_takes_as_many_queries_for_many(self, studio, owner, django_assert_max_num_queries):
        for number in range(12):
            factories.member(studio, first_name=f"M{number}")

        with django_assert_max_num_queries(5):
            rows = owner[1].get(PATH).json()["results"]

        assert len(rows) == 14


class TestChange:
    def test_works(self, studio, owner, maker, technician):
        answer = changed(
            owner[1], technician[0], roles=["maker", "technician"], helps=[str(maker[0].pk)]
        )

        assert answer.status_code == 200
        assert answer.json()["member"]["roles"] == ["maker", "technician"]
        assert answer.json()["member"]["helps"] == [str(maker[0].pk)]
        entry = JournalEntry.objects.get(studio=studio, seq=answer.json()["journal_seq"])
        assert (entry.verb, entry.facts["roles"]) == ("changed_member", ["maker", "technician"])

    def test_takes_effect_at_once(self, owner, maker, technician):
        changed(owner[1], maker[0], roles=["owner"])

        assert changed(maker[1], technician[0], roles=["maker"]).status_code == 200

    def test_keeps_one_owner(self, studio, owner):
        founder = Member.objects.get(studio=studio, first_name="Founder")

        first = changed(owner[1], founder, roles=["maker"])
        last = changed(owner[1], owner[0], roles=["maker"])

        assert first.status_code == 200
        assert last.status_code == 409
        assert last.json()["type"] == "/problems/last-owner"
        assert Member.objects.get(pk=owner[0].pk).roles == [Role.OWNER]

    def test_does_not_count_an_owner_who_left(self, studio, owner, now):
        Member.objects.filter(studio=studio, first_name="Founder").update(left_at=now)

        assert changed(owner[1], owner[0], roles=["maker"]).status_code == 409

    def test_is_for_owners(self, maker, technician):
        answer = changed(maker[1], technician[0], roles=["owner"])

        assert answer.status_code == 403
        assert answer.json()["needed"] == "manage_members"

    def test_knows_nobody_of_another_studio(self, owner, maker, stranger):
        assert changed(owner[1], stranger[0], roles=["maker"]).status_code == 404
        answer = changed(owner[1], maker[0], helps=[str(stranger[0].pk)])
        assert answer.status_code == 400
        assert answer.json()["errors"][0]["pointer"] == "#/helps/0"

    def test_refuses_to_help_oneself(self, owner, maker):
        answer = changed(owner[1], maker[0], helps=[str(maker[0].pk)])

        assert answer.status_code == 422

    def test_leaves_the_clockwork_alone(self, studio, owner):
        clockwork = Member.objects.get(studio=studio, user=None)

        assert changed(owner[1], clockwork, roles=["owner"]).status_code == 404
        assert owner[1].get(f"{PATH}{clockwork.pk}/").status_code == 404
