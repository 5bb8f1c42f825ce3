// Generated from the server's OpenAPI by `npm run schema`; never edited.
// document 241fc686191eb439a2b364c25d732d765cfe8b72b4b0c1fc8e20f1c706997b80
// types 014e394500745f0bea4dd2cb7c7376bfef3b670b44e0aa140f66da6ad5293c2c
export interface paths {
    "/api/v1/invitations/{token}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say which studio invites, and as what. */
        get: operations["invitation_link_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitations/{token}/acceptance/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Join the studio, with the account signed in or a new one, and be signed in. */
        post: operations["invitation_link_accept"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say who calls, where they belong and what they may do there. */
        get: operations["me_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change how I like to see things, in one studio or in all of mine. */
        patch: operations["me_change"];
        trace?: never;
    };
    "/api/v1/session/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Sign in; after five wrong passwords for a name from one address, wait. */
        post: operations["session_begin"];
        /** @description Sign out. */
        delete: operations["session_end"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/shares/{token}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell what a link shows; only what was chosen is in it. */
        get: operations["shares_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/shares/{token}/approvals/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say yes or no to what is asked; the first answer stands. */
        post: operations["shares_answer"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/approvals/{approval_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Write down what the client said; the first answer stands until its teller corrects it. */
        post: operations["studios_approvals_answers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/assignments/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Promise pieces to a line of an order, or to none; their past comes along. */
        post: operations["studios_assignments_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/away/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List who is or was away, last first; what was called off is left out. */
        get: operations["away_list"];
        put?: never;
        /** @description Say that I am away, or for an owner, that somebody else is. */
        post: operations["away_say"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/away/{away_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** @description Say that the member is not away after all. */
        delete: operations["away_call_off"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/backups/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the backups, and what came of the last trial. */
        get: operations["backups_list"];
        put?: never;
        /** @description Ask for a backup or a trial out of turn; it is done in the background. */
        post: operations["backups_ask"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/bench/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description What to look at, join, press and fire now. */
        get: operations["studios_bench_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/bulk/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Do the same to many by one act: all of them, or none with each refusal named. */
        post: operations["studios_bulk_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/claims/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List who says that found things are theirs. */
        get: operations["claims_list"];
        put?: never;
        /** @description Say that a found thing is mine; where two say so the owner hears of it. */
        post: operations["studios_claims_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/clashes/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the stories that do not agree, newest first. */
        get: operations["clashes_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/clashes/{clash_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell both stories side by side. */
        get: operations["clashes_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/clashes/{clash_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say which story stands; the first answer counts. */
        post: operations["studios_clashes_answers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/clay-bodies/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The list of one kind of material; subclasses say which. */
        get: operations["clay_bodies_list"];
        put?: never;
        /** @description The list of one kind of material; subclasses say which. */
        post: operations["studios_clay_bodies_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/clay-bodies/{row_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description One material; subclasses say of which kind. */
        get: operations["studios_clay_bodies_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description One material; subclasses say of which kind. */
        patch: operations["studios_clay_bodies_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/clay-bodies/{row_id}/test-bars/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The test bars of one body. */
        get: operations["test_bars_list"];
        put?: never;
        /** @description The test bars of one body. */
        post: operations["studios_clay_bodies_test_bars_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/colour-batches/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The list of one kind of material; subclasses say which. */
        get: operations["colour_batches_list"];
        put?: never;
        /** @description The list of one kind of material; subclasses say which. */
        post: operations["studios_colour_batches_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/colour-batches/{row_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description One material; subclasses say of which kind. */
        get: operations["studios_colour_batches_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description One material; subclasses say of which kind. */
        patch: operations["studios_colour_batches_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the orders: at risk first, then on course, then those closed last. */
        get: operations["commissions_list"];
        put?: never;
        /** @description Take an order. */
        post: operations["studios_commissions_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell one order: its counts in sets, its pieces, what was reported; `ETag` for PATCH. */
        get: operations["commissions_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change an order; with `If-Match`, only where nobody else did meanwhile. */
        patch: operations["studios_commissions_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/approvals/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what the client of an order was asked, the nearest day first. */
        get: operations["approvals_list"];
        put?: never;
        /** @description Ask the client for a yes or a no by a day; it stands on the page they are shown. */
        post: operations["studios_commissions_approvals_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/closings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Close an order, cancel it, or open it again; its pieces stay as they are. */
        post: operations["studios_commissions_closings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/deliveries/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Hand pieces over to the client; the order closes when no more is wanted. */
        post: operations["studios_commissions_deliveries_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/history.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give the whole history as a table; cells that look like sums are defused. */
        get: operations["commissions_history_table"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/history/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell the history of an order and its pieces from the journal, newest first. */
        get: operations["commissions_history"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/lines/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Add a line to an order. */
        post: operations["studios_commissions_lines_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/links/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the links of an order, the newest first, with when they were opened. */
        get: operations["links_list"];
        put?: never;
        /** @description Make a link; its address is answered this once. Nothing is sent to anybody. */
        post: operations["studios_commissions_links_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/links/preview/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Show what a link would show, exactly as its holder would see it; nothing is made. */
        post: operations["links_preview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/lives/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell where each piece of an order stood, those that were lost too. */
        get: operations["commissions_lives"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/outlook/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say how likely enough is there in time, how many more to press, and by when. */
        get: operations["commissions_outlook"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/papers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give the papers as they stand now, as a draft to print. */
        get: operations["commissions_papers"];
        put?: never;
        /** @description Sign the papers: they are kept as they stand, and what is told later stands beside. */
        post: operations["studios_commissions_papers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/papers/{copy_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give papers as they were signed, byte for byte. */
        get: operations["commissions_papers_signed"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/papers/facts/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say what is in the papers, what is missing, and which were signed. */
        get: operations["commissions_papers_facts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/commissions/{commission_id}/promises/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Promise another day; the history shows every one there was. */
        post: operations["studios_commissions_promises_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/designs/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the designs with their parts. */
        get: operations["designs_list"];
        put?: never;
        /** @description Make a design; walls above the studio's limit are warned of. */
        post: operations["studios_designs_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/designs/{design_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        get: operations["studios_designs_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change a design; its parts with an `id` are changed, those without are added. */
        patch: operations["studios_designs_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/devices/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List my devices; for an owner, everybody's. */
        get: operations["devices_list"];
        put?: never;
        /** @description Register this device as mine; an owner may make a shared phone instead. */
        post: operations["devices_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/devices/{device_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show one device. */
        get: operations["devices_read"];
        put?: never;
        post?: never;
        /** @description Sign a device off for good: its session ends, its acts stay. */
        delete: operations["devices_revoke"];
        options?: never;
        head?: never;
        /** @description Name a device anew, or unlock it. */
        patch: operations["devices_change"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/exports/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give a zip of tables (CSV) and photos with all that the studio has. */
        get: operations["exports_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/found/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what was found, newest first. */
        get: operations["found_list"];
        put?: never;
        /** @description Keep that something was found; it cannot go on a load until it is given back. */
        post: operations["studios_found_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/found/{found_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell one found thing: up to three people to ask, and who claims it. */
        get: operations["found_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/found/{found_id}/askings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Ask people whether it is theirs. */
        post: operations["studios_found_askings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/found/{found_id}/endings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Give it back to who claims it; or, as the owner and after its notice, let it go. */
        post: operations["studios_found_endings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/glaze-batches/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The list of one kind of material; subclasses say which. */
        get: operations["glaze_batches_list"];
        put?: never;
        /** @description The list of one kind of material; subclasses say which. */
        post: operations["studios_glaze_batches_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/glaze-batches/{row_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description One material; subclasses say of which kind. */
        get: operations["studios_glaze_batches_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description One material; subclasses say of which kind. */
        patch: operations["studios_glaze_batches_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/held-acts/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List acts that came after their member left or their phone was signed off. */
        get: operations["held_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/held-acts/{held_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Take a held act into the story, as its own member's, or refuse it; it stays kept. */
        post: operations["held_answer"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/invitations/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List invitations, newest first. */
        get: operations["invitations_list"];
        put?: never;
        /** @description Make a link that one person can take once. */
        post: operations["invitations_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/invitations/{invitation_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** @description Withdraw an invitation that nobody took. */
        delete: operations["invitations_withdraw"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/journal/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell the story of a thing, newest first, or everything after a number, oldest first. */
        get: operations["journal_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/kiln-queue/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show what waits by kind and cone, each with the rule's sentence on its place. */
        get: operations["kiln_queue"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/kilns/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show every kiln: what it is doing, till when, who watches. */
        get: operations["kilns_list"];
        put?: never;
        /** @description Make a kiln with its furniture and its place. */
        post: operations["studios_kilns_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/kilns/{kiln_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show one kiln. */
        get: operations["kilns_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change a kiln; its shelves or posts, where given, stand for all it had. */
        patch: operations["studios_kilns_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/kilns/{kiln_id}/events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List when a kiln went out of use and came back, newest first. */
        get: operations["kiln_events_list"];
        put?: never;
        /** @description Take a kiln out of use, or back; answers with the loads that want another kiln. */
        post: operations["studios_kilns_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/kilns/{kiln_id}/service/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what was done to a kiln and found on it, newest first. */
        get: operations["kiln_service_list"];
        put?: never;
        /** @description Write into its book; answers with the health of the kiln as it is then. */
        post: operations["studios_kilns_service_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/lines/{line_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change what a line says or how many sets it wants. */
        patch: operations["studios_lines_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/lines/{line_id}/plannings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Plan whole sets of a line; the pieces of one set are matched with each other. */
        post: operations["studios_lines_plannings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/lines/{line_id}/recipe/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say anew what makes a set of a line. */
        post: operations["studios_lines_recipe_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/links/{link_id}/revocations/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Take a link back: from now on it opens for nobody. */
        post: operations["studios_links_revocations_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/load-clashes/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the stories of loads that do not agree, newest first. */
        get: operations["load_clashes_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/load-clashes/{clash_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell both stories side by side. */
        get: operations["load_clashes_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/load-clashes/{clash_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say which story stands; the first answer counts. */
        post: operations["studios_load_clashes_answers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the loads, the latest start first; `from` keeps what is still going on. */
        get: operations["loads_list"];
        put?: never;
        /** @description Open a load for a slot of a kiln. */
        post: operations["studios_loads_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show one load with its ware and its log. */
        get: operations["loads_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change when, where and how it is fired; whoever has ware in it is told. */
        patch: operations["studios_loads_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/cones/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List how the cones of a load stood. */
        get: operations["cones_list"];
        put?: never;
        /** @description Keep how the cones stood, shelf by shelf, by the hand of a clock. */
        post: operations["studios_loads_cones_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/cooling/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say when the kiln may likely be opened; null unless it is cooling. */
        get: operations["loads_cooling"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/could-go/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show what waits for this kind of firing: whether it fits, and what speaks against it. */
        get: operations["loads_could_go"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what happened to a load and stands, newest first. */
        get: operations["load_events_list"];
        put?: never;
        /** @description Say what happened to a load; its ware goes in, comes out or goes back with it. */
        post: operations["studios_loads_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/fees/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show each maker's litres and fee: by the tariff, or a cost shared to the penny. */
        get: operations["loads_fees"];
        put?: never;
        /** @description Record what each maker pays; what was recorded before stays in the book. */
        post: operations["studios_loads_fees_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/fit/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say whether the ware fits, why, and show where it would stand. */
        get: operations["loads_fit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/placements/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Put ware on an open load: all of it, or none with each exception named. */
        post: operations["studios_loads_placements_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/loads/{load_id}/readings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the readings of a load as given, newest first. */
        get: operations["kiln_readings_list"];
        put?: never;
        /**
         * @description Keep readings; odd ones are kept too, asked about and left out of every sum.
         *
         *     `corrects` names the act of a reading that was wrong: this one stands in its stead.
         */
        post: operations["studios_loads_readings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/masters/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the masters. */
        get: operations["masters_list"];
        put?: never;
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        post: operations["studios_masters_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/masters/{master_id}/events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say that a master is ready, or lost. */
        post: operations["studios_masters_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/matches/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what was said of pieces that stand together, newest first. */
        get: operations["matches_list"];
        put?: never;
        /** @description Say that two pieces stand together, or not any more; the newest word counts. */
        post: operations["studios_matches_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/members/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List who is in the studio now, by first name. */
        get: operations["members_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/members/{member_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show one person, also one who has left. */
        get: operations["members_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Give somebody other roles, or other makers to help. */
        patch: operations["members_change"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/members/{member_id}/leaving/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say when somebody leaves: their sign-in ends then, and what they did stays. */
        post: operations["members_leave"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-parts/{part_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        get: operations["studios_mould_parts_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-parts/{part_id}/events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what was said of a mould part, the newest first. */
        get: operations["mould_part_events_list"];
        put?: never;
        /** @description Say what happened to a mould part; a chip answers with the presses to look over. */
        post: operations["studios_mould_parts_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the sets with casting, dampness, wear and next booking. */
        get: operations["mould_sets_list"];
        put?: never;
        /** @description Make a set; without `owner_id` it is the writer's, with null the studio's. */
        post: operations["studios_mould_sets_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description What the endpoints about one set share. */
        get: operations["studios_mould_sets_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description What the endpoints about one set share. */
        patch: operations["studios_mould_sets_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/bookings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the bookings of a set that run or are to come. */
        get: operations["mould_bookings_list"];
        put?: never;
        /** @description Book a set; where somebody has it then, 409 says who. */
        post: operations["studios_mould_sets_bookings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/bookings/{booking_id}/endings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Give a booking up. */
        post: operations["studios_mould_sets_bookings_endings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/castings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the castings of a set, the newest first. */
        get: operations["castings_list"];
        put?: never;
        /** @description Record a pouring; the casting before it is laid aside, its last presses listed. */
        post: operations["studios_mould_sets_castings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/crumb-check/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show the last presses, newest first; of a hurt part, all since it was found good. */
        get: operations["crumb_check_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/inspections/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the looks at the detail of a set's mould parts, the newest first. */
        get: operations["mould_inspections_list"];
        put?: never;
        /** @description Say how crisp the detail of a mould part is. */
        post: operations["studios_mould_sets_inspections_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/pressings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the pressings of a set, newest first. */
        get: operations["pressings_list"];
        put?: never;
        /** @description Press: it wears the mould, and makes the parts and the pieces that are not there yet. */
        post: operations["studios_mould_sets_pressings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/readiness/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say whether a set may be pressed, since what, and when it will be dry enough. */
        get: operations["studios_mould_sets_readiness_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/mould-sets/{set_id}/weighings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the weighings of a set, the newest first. */
        get: operations["mould_weighings_list"];
        put?: never;
        /** @description Weigh the casting in use, without clay; a weight that cannot be is refused (422). */
        post: operations["studios_mould_sets_weighings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/number-blocks/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Lend this device the next twenty numbers of a series; they are never lent again. */
        post: operations["number_blocks_lease"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/opening/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show when somebody is usually in; `ETag` is the revision of the settings. */
        get: operations["opening_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change the week, the closed days, or both. */
        patch: operations["opening_change"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/parts/{part_id}/events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what happened to a part, newest first. */
        get: operations["part_events_list"];
        put?: never;
        /** @description Say what happened to a part. */
        post: operations["studios_parts_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/photos/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List photos, newest first. */
        get: operations["photos_list"];
        put?: never;
        /** @description Keep a photo without what the camera wrote into it; 413 when it is too large. */
        post: operations["studios_photos_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/photos/{photo_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell of one photo. */
        get: operations["photos_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/photos/{photo_id}/image/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give the picture, at most 2048 pixels at its longest side. */
        get: operations["photos_image"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/photos/{photo_id}/thumbnail/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Give the picture, at most 256 pixels at its longest side. */
        get: operations["photos_thumbnail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List pieces by their marks; `q` looks in mark, design and maker, whatever the accents. */
        get: operations["pieces_list"];
        put?: never;
        /** @description Plan pieces of one design; each begins where its design is. */
        post: operations["studios_pieces_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell one piece: where it is, its parts, what it waits for, and what was told last. */
        get: operations["pieces_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change what a piece is meant for; only an owner lifts "display only". */
        patch: operations["pieces_change"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/checks/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List how a piece felt, newest first. */
        get: operations["touch_checks_list"];
        put?: never;
        /** @description Say how a piece, or one part of it, feels. */
        post: operations["studios_pieces_checks_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/covers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List how a piece was covered, newest first. */
        get: operations["covers_list"];
        put?: never;
        /** @description Say how a piece is covered, or some of its parts. */
        post: operations["studios_pieces_covers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/drying/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description How a piece dries, as last reckoned. */
        get: operations["studios_pieces_drying_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/firing-tickets/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List which cones were asked for a piece, newest first. */
        get: operations["firing_tickets_list"];
        put?: never;
        /** @description Say which cone a piece waits for; fired ware with a ticket waits to be fired again. */
        post: operations["studios_pieces_firing_tickets_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/food-contact/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Say which limits a piece falls under, and whether a report speaks for it. */
        get: operations["pieces_food_contact"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/history/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Tell the story of a piece from the journal, newest first; nothing is left out of it. */
        get: operations["pieces_history"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/moves/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List where a piece was put, newest first. */
        get: operations["moves_list"];
        put?: never;
        /** @description Say where a piece was put; anybody may. */
        post: operations["studios_pieces_moves_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/parts/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the parts of a piece, those that ended too. */
        get: operations["parts_list"];
        put?: never;
        /** @description Say that a part was made without a mould. */
        post: operations["studios_pieces_parts_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/photos/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say that photos show a piece; anybody may. */
        post: operations["studios_pieces_photos_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/queue-turns/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Put a piece first for its next firing of a kind. */
        post: operations["studios_pieces_queue_turns_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/stage-events/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List where a piece was said to come to, newest first. */
        get: operations["stage_events_list"];
        put?: never;
        /** @description Say that a piece came to a stage, is lost, or was found. */
        post: operations["studios_pieces_stage_events_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/weighings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the weights of a piece, newest first. */
        get: operations["piece_weighings_list"];
        put?: never;
        /** @description Weigh a piece; a weight that cannot be is refused (422) and can be taken again. */
        post: operations["studios_pieces_weighings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/pieces/{piece_id}/what-if/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Reckon with what this studio has learned, from where the piece stands now. */
        post: operations["pieces_what_if"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/placements/{placement_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Say on which shelf, and where on it, something stands; until the load is over. */
        patch: operations["studios_placements_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/placements/{placement_id}/removals/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Take something off an open load. */
        post: operations["studios_placements_removals_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/places/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List every place; `parent_id` makes the tree. */
        get: operations["places_list"];
        put?: never;
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        post: operations["studios_places_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/places/{place_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        get: operations["studios_places_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        patch: operations["studios_places_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/places/{place_id}/readings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List readings as given, newest first; with `every`, hourly or other even means. */
        get: operations["readings_list"];
        put?: never;
        /** @description Keep readings; odd ones are kept too, with a warning, and left out or asked about. */
        post: operations["studios_places_readings_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/programmes/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List the programmes, each with what its cone needs at its last rate. */
        get: operations["programmes_list"];
        put?: never;
        /** @description Make a programme; a cone on the wrong side of zero is asked about. */
        post: operations["studios_programmes_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/programmes/{programme_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show one programme. */
        get: operations["programmes_one"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change a programme; segments, where given, stand for all it had. */
        patch: operations["studios_programmes_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/readings/{reading_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say what an odd reading meant; the last answer stands. */
        post: operations["studios_readings_answers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/refused/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what members tried and may not do, newest first. */
        get: operations["refused_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/reminders/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List my reminders: those that are due, put off, or done with. */
        get: operations["reminders_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/reminders/{reminder_id}/answers/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Say that it is done, put it off, or let it go. */
        post: operations["studios_reminders_answers_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/retractions/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Take an act back: it stays in the story, struck through. */
        post: operations["studios_retractions_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/runs/{run_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        get: operations["studios_runs_retrieve"];
        put?: never;
        post?: never;
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        delete: operations["studios_runs_destroy"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/search/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Find pieces, orders, moulds, loads, places, people and found ware: at most fifty. */
        get: operations["search"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/settings/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description Show the studio's limits and habits; `ETag` is their revision. */
        get: operations["settings_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Change some; with `If-Match`, only where nobody else did meanwhile. */
        patch: operations["settings_change"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/slab-blocks/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description The list of one kind of material; subclasses say which. */
        get: operations["slab_blocks_list"];
        put?: never;
        /** @description The list of one kind of material; subclasses say which. */
        post: operations["studios_slab_blocks_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/slab-blocks/{row_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description One material; subclasses say of which kind. */
        get: operations["studios_slab_blocks_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description One material; subclasses say of which kind. */
        patch: operations["studios_slab_blocks_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/sums/drying/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Reckon a section in given air, under given covers; nothing is kept. */
        post: operations["sums_drying_here"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/test-bars/{row_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description An endpoint under /studios/{slug}/: strangers get 404, members what their role includes. */
        get: operations["studios_test_bars_retrieve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** @description Add the lengths taken after a later stage. */
        patch: operations["studios_test_bars_partial_update"];
        trace?: never;
    };
    "/api/v1/studios/{slug}/test-reports/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List what laboratories wrote, newest first; what was put right since is left out. */
        get: operations["test_reports_list"];
        put?: never;
        /** @description Keep what a laboratory wrote about lead and cadmium; `corrects` puts one right. */
        post: operations["studios_test_reports_create"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/tokens/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** @description List my tokens; for an owner, everybody's. */
        get: operations["tokens_list"];
        put?: never;
        /** @description Make a token that can do some of what I can; its key is shown this once. */
        post: operations["tokens_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{slug}/tokens/{token_id}/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** @description Revoke a token; what was written with it stays. */
        delete: operations["tokens_revoke"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sums/drying/": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** @description Reckon a section in given air, under given covers; nothing is kept. */
        post: operations["sums_drying"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        AdviceOut: {
            code: string;
            reason: string;
        };
        /** @description The same from some hours after the beginning on. */
        AirFromInRequest: {
            air_c: number | string;
            /** Format: double */
            from_h: number;
            humidity_fraction: number | string;
        };
        /** @description The mean air of one step; humidity is reckoned from the mean vapour density. */
        AirStepOut: {
            /** Format: double */
            air_c: number;
            /** Format: date-time */
            at: string;
            /** Format: double */
            humidity_fraction: number;
            /** Format: double */
            vapour_kg_m3: number;
        };
        AirStepsOut: {
            every_s: number;
            results: components["schemas"]["AirStepOut"][];
        };
        /** @description The air of a room; what a meter cannot show is refused. */
        AirSumInRequest: {
            air_c: number | string;
            humidity_fraction: number | string;
        };
        /** @description What every answer to an act says. */
        ApprovalActOut: {
            approval: components["schemas"]["ApprovalOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
        };
        /** @description What the client said to somebody here; `let_go` where it need not be asked any more. */
        ApprovalAnswerInRequest: {
            /**
             * @description * `yes` - Yes
             *     * `no` - No
             *     * `let_go` - Let Go
             * @enum {string}
             */
            answer: "yes" | "no" | "let_go";
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        ApprovalAnswerOut: {
            /**
             * @description * `yes` - Yes
             *     * `no` - No
             *     * `let_go` - Let Go
             * @enum {string}
             */
            answer: "yes" | "no" | "let_go";
            client_words: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** @description Who wrote it down; null by a link. */
            member: components["schemas"]["PersonNamedOut"] | null;
            /**
             * @description * `link` - Link
             *     * `told` - Told
             * @enum {string}
             */
            through: "link" | "told";
            words: string;
        };
        /** @description What the client is asked, by when; `corrects` names the asking that it takes the place of. */
        ApprovalInRequest: {
            /**
             * @description * `colour` - Colour
             *     * `pattern` - Pattern
             *     * `shape` - Shape
             *     * `size` - Size
             *     * `glaze` - Glaze
             *     * `other` - Other
             * @enum {string}
             */
            about: "colour" | "pattern" | "shape" | "size" | "glaze" | "other";
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date */
            due_date: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            question: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `shaping` - Shaping
             *     * `bisque` - Bisque
             *     * `glazing` - Glazing
             *     * `delivery` - Delivery
             * @enum {string}
             */
            waits: "shaping" | "bisque" | "glazing" | "delivery";
        };
        ApprovalListOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            results: components["schemas"]["ApprovalOut"][];
        };
        ApprovalOut: {
            /**
             * @description * `colour` - Colour
             *     * `pattern` - Pattern
             *     * `shape` - Shape
             *     * `size` - Size
             *     * `glaze` - Glaze
             *     * `other` - Other
             * @enum {string}
             */
            about: "colour" | "pattern" | "shape" | "size" | "glaze" | "other";
            answer: components["schemas"]["ApprovalAnswerOut"] | null;
            /** Format: date-time */
            asked_at: string;
            asked_by: components["schemas"]["PersonNamedOut"];
            /** @description Until when the clay waits; empty once answered. */
            clay_words: string;
            /** Format: date */
            due_date: string;
            /** Format: uuid */
            id: string;
            /** @description To send to the client by oneself; empty once done. */
            message: string;
            question: string;
            title: string;
            /**
             * @description * `shaping` - Shaping
             *     * `bisque` - Bisque
             *     * `glazing` - Glazing
             *     * `delivery` - Delivery
             * @enum {string}
             */
            waits: "shaping" | "bisque" | "glazing" | "delivery";
            waits_words: string;
        };
        /** @description Something the act suggests but does not do. */
        AskedOut: {
            code: string;
            detail: string;
            /** Format: uuid */
            mould_set_id: string | null;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        AskingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            member_ids: string[];
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        AssignedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            pieces: components["schemas"]["PieceBriefOut"][];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description Promise pieces to a line; no line takes them out of their order. */
        AssignmentInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** Format: uuid */
            line_id: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            piece_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        AwayInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            buddy_id?: string | null;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date */
            from_date: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * Format: uuid
             * @description Me, when left out; others by an owner.
             */
            member_id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * Format: date
             * @description The last day away.
             */
            until_date: string;
        };
        /** @description What every answer to an act says. */
        AwayMadeOut: {
            away: components["schemas"]["AwayOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
        };
        AwayOut: {
            /** Format: uuid */
            buddy_id: string | null;
            /** Format: date */
            from_date: string;
            /** Format: uuid */
            id?: string;
            /** Format: uuid */
            member_id: string;
            /** Format: date */
            until_date: string;
        };
        /** @description Some AwayOut rows, and where the next ones are. */
        AwayOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["AwayOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        BackupAskInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description `backup`: make one; `drill`: restore the newest for trial.
             *
             *     * `backup` - backup
             *     * `drill` - drill
             * @enum {string}
             */
            what: "backup" | "drill";
        };
        /** @description What every answer to an act says. */
        BackupAskOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /**
             * @description * `backup` - backup
             *     * `drill` - drill
             * @enum {string}
             */
            what: "backup" | "drill";
        };
        BackupOut: {
            file: string;
            /** @description Whether it came back whole then. */
            is_good: boolean | null;
            /** Format: date-time */
            made_at: string;
            size_bytes: number;
            /**
             * Format: date-time
             * @description When it was last restored for trial.
             */
            tried_at: string | null;
        };
        BackupsOut: {
            /** @description Asked for and not done yet. */
            asked: ("backup" | "drill")[];
            /** @description Of the last one, where it could not be made. */
            failure: components["schemas"]["BackupTryOut"] | null;
            /** Format: date-time */
            good_drill_at: string | null;
            /** @description None was tried for more than 35 days. */
            is_drill_old: boolean;
            /** @description The newest is older than 36 hours. */
            is_old: boolean;
            last_drill: components["schemas"]["BackupTryOut"] | null;
            /** @description Newest first. Each was read back whole when made. */
            results: components["schemas"]["BackupOut"][];
        };
        BackupTryOut: {
            /** Format: date-time */
            at: string;
            file: string;
            is_good: boolean;
            /** @description What was wrong, in words; empty when nothing was. */
            words: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        BarInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            bisque_mm?: number | string | null;
            /** Format: uuid */
            corrects?: string | null;
            dry_mm?: number | string | null;
            fired_mm?: number | string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** @description The line as scratched. */
            wet_mm: number | string;
        };
        BarOut: {
            /** Format: double */
            bisque_mm?: number | null;
            /** Format: uuid */
            readonly body_id: string;
            /** Format: double */
            dry_mm?: number | null;
            /** Format: double */
            fired_mm?: number | null;
            /** Format: uuid */
            id?: string;
            /** Format: date-time */
            measured_at: string;
            readonly shrinkages: {
                [key: string]: number | null;
            };
            /** Format: double */
            wet_mm: number;
        };
        /** @description Some BarOut rows, and where the next ones are. */
        BarOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["BarOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        BatchInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id: string;
            caution?: string;
            clay_g?: number | string | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            label: string;
            /** Format: date */
            mixed_on?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            stain_g?: number | string | null;
        };
        BatchOut: {
            readonly body_code: string;
            /** Format: uuid */
            readonly body_id: string;
            caution?: string;
            readonly cautions: string[];
            /** Format: double */
            clay_g?: number | null;
            /** Format: uuid */
            id?: string;
            label: string;
            /** Format: date */
            mixed_on?: string | null;
            /** Format: double */
            stain_g?: number | null;
        };
        /** @description Some BatchOut rows, and where the next ones are. */
        BatchOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["BatchOut"][];
        };
        /** @description The first screen in one answer. */
        BenchOut: {
            /** Format: date-time */
            at: string;
            confidence: components["schemas"]["ConfidenceOut"];
            drying: components["schemas"]["BenchRowOut"][];
            /** Format: date-time */
            forecast_at: string | null;
            join_today: components["schemas"]["JoinRowOut"][];
            journal_seq: number;
            later: components["schemas"]["BenchRowOut"][];
            later_today: components["schemas"]["BenchRowOut"][];
            look_now: components["schemas"]["BenchRowOut"][];
            press_next: components["schemas"]["PressRowOut"][];
            ready_for_bisque: components["schemas"]["BenchRowOut"][];
        };
        BenchRowOut: {
            /** Format: uuid */
            clash_id: string | null;
            confidence: components["schemas"]["ConfidenceOut"];
            cover_next: components["schemas"]["CoverStepOut"] | null;
            /** Format: date-time */
            forecast_at: string | null;
            /** Format: date-time */
            look_again_at: string | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mine: boolean;
            mould: components["schemas"]["MouldNamedOut"] | null;
            part: components["schemas"]["PartNamedOut"] | null;
            piece: components["schemas"]["PieceNamedOut"];
            place: components["schemas"]["PlaceNamedOut"] | null;
            ready_at: components["schemas"]["QuantilesOut"] | null;
            reason: string;
            /** Format: date-time */
            since_at: string;
            /**
             * @description * `past` - past
             *     * `in_window` - in_window
             *     * `later` - later
             *     * `not_today` - not_today
             *     * `asked` - asked
             *     * `drying` - drying
             *     * `worth_a_touch` - worth_a_touch
             *     * `not_in_this_room` - not_in_this_room
             *     * `ready` - ready
             * @enum {string}
             */
            verdict: "past" | "in_window" | "later" | "not_today" | "asked" | "drying" | "worth_a_touch" | "not_in_this_room" | "ready";
            window: components["schemas"]["WindowOut"] | null;
        };
        /** @description One mould part; `presses_before` is taken over from earlier notes. */
        BlockInRequest: {
            /** Format: uuid */
            id?: string;
            name: string;
            /** @default 0 */
            presses_before: number;
            /** Format: uuid */
            said_by_id?: string | null;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        BodyInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            caution?: string;
            code: string;
            /** Format: uuid */
            corrects?: string | null;
            dry_shrinkage_fraction?: number | string | null;
            /**
             * @description * `red_earthenware` - red_earthenware
             *     * `white_earthenware` - white_earthenware
             *     * `grogged_stoneware` - grogged_stoneware
             *     * `smooth_stoneware` - smooth_stoneware
             *     * `porcelain` - porcelain
             *     * `terracotta_crank` - terracotta_crank
             * @enum {string}
             */
            drying_body: "red_earthenware" | "white_earthenware" | "grogged_stoneware" | "smooth_stoneware" | "porcelain" | "terracotta_crank";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            name: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            top_cone?: string;
            total_shrinkage_fraction?: number | string | null;
        };
        BodyNamedOut: {
            code: string;
            /** Format: uuid */
            id: string;
            name: string;
        };
        BodyOut: {
            caution?: string;
            readonly cautions: string[];
            code: string;
            /** Format: double */
            dry_shrinkage_fraction?: number | null;
            drying_body: string;
            /** Format: uuid */
            id?: string;
            readonly measured: components["schemas"]["MeasuredOut"];
            name: string;
            top_cone?: string;
            /** Format: double */
            total_shrinkage_fraction?: number | null;
        };
        /** @description Some BodyOut rows, and where the next ones are. */
        BodyOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["BodyOut"][];
        };
        /** @description A booking is given up. */
        BookingEndInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        BookingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            from_at: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: date-time */
            until_at: string;
        };
        BookingOut: {
            /** Format: date-time */
            from_at: string;
            /** Format: date-time */
            given_up_at?: string | null;
            /** Format: uuid */
            id?: string;
            member: components["schemas"]["MouldUserOut"];
            /** Format: uuid */
            readonly mould_set_id: string;
            /** Format: date-time */
            until_at: string;
        };
        /** @description Some BookingOut rows, and where the next ones are. */
        BookingOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["BookingOut"][];
        };
        /**
         * @description The same of many: `ids` are pieces, or parts for the kinds that concern parts.
         *
         *     `except_ids` are those of them that it was not done to.
         */
        BulkInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** @default  */
            cause: string;
            /** @default false */
            cause_is_guess: boolean;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * @description * `open` - Open
             *     * `loose` - Loose
             *     * `tucked` - Tucked
             *     * `sealed` - Sealed
             * @enum {string}
             */
            cover?: "open" | "loose" | "tucked" | "sealed";
            except_ids?: string[];
            /**
             * @description * `fine` - Fine
             *     * `soft` - Soft
             *     * `leather_hard` - Leather Hard
             *     * `too_stiff` - Too Stiff
             *     * `bone_dry` - Bone Dry
             * @enum {string}
             */
            feel?: "fine" | "soft" | "leather_hard" | "too_stiff" | "bone_dry";
            /**
             * Format: uuid
             * @description What it was dipped in, where it came to be glazed.
             */
            glaze_batch_id?: string | null;
            /**
             * @description * `first` - First
             *     * `second` - Second
             * @default
             * @enum {string}
             */
            grade: "first" | "second" | "";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            ids: string[];
            /**
             * @description * `cover` - cover
             *     * `move` - move
             *     * `check` - check
             *     * `stage` - stage
             *     * `lose` - lose
             *     * `demoulded` - demoulded
             *     * `not_yet` - not_yet
             *     * `joined` - joined
             *     * `cracked` - cracked
             * @enum {string}
             */
            kind: "cover" | "move" | "check" | "stage" | "lose" | "demoulded" | "not_yet" | "joined" | "cracked";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            /** @default  */
            reason: string;
            /**
             * @description * `none` - None
             *     * `plain` - Plain
             *     * `mixed` - Mixed
             * @default
             * @enum {string}
             */
            reclaim: "none" | "plain" | "mixed" | "";
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `model` - model
             *     * `mould` - mould
             *     * `pressing` - pressing
             *     * `assembly` - assembly
             *     * `drying` - drying
             *     * `bisque` - bisque
             *     * `glaze` - glaze
             *     * `finished` - finished
             *     * `delivered` - delivered
             *     * `lost` - lost
             * @enum {string}
             */
            stage?: "model" | "mould" | "pressing" | "assembly" | "drying" | "bisque" | "glaze" | "finished" | "delivered" | "lost";
            /**
             * @description * `wants_model` - wants_model
             *     * `wants_mould` - wants_mould
             *     * `to_press` - to_press
             *     * `in_mould` - in_mould
             *     * `out` - out
             *     * `joined` - joined
             *     * `drying` - drying
             *     * `bone_dry` - bone_dry
             *     * `in_bisque` - in_bisque
             *     * `bisqued` - bisqued
             *     * `glazed` - glazed
             *     * `in_glaze` - in_glaze
             *     * `glaze_fired` - glaze_fired
             *     * `checked` - checked
             *     * `packed` - packed
             *     * `delivered` - delivered
             *     * `scrapped` - scrapped
             *     * `missing` - missing
             *     * `let_go` - let_go
             * @enum {string}
             */
            state?: "wants_model" | "wants_mould" | "to_press" | "in_mould" | "out" | "joined" | "drying" | "bone_dry" | "in_bisque" | "bisqued" | "glazed" | "in_glaze" | "glaze_fired" | "checked" | "packed" | "delivered" | "scrapped" | "missing" | "let_go";
        };
        /** @description What every answer to an act says. */
        BulkOut: {
            cautions: components["schemas"]["WordOut"][];
            done_ids: string[];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            left_out_ids: string[];
            pieces: components["schemas"]["PieceBriefOut"][];
        };
        CameFromOut: {
            place: components["schemas"]["PlaceNamedOut"] | null;
            stage: string;
            state: string;
        };
        /** @description One pouring from a master. From a fired piece it is refused, with the size to enlarge to. */
        CastingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: double */
            capacity_fraction?: number;
            /** Format: uuid */
            corrects?: string | null;
            /** @description A length of the fired piece, for the enlargement. */
            fired_mm?: number | string | null;
            generation?: number | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default true */
            is_in_use: boolean;
            /**
             * @description * `master` - master
             *     * `fired_piece` - fired_piece
             * @default master
             * @enum {string}
             */
            made_from: "master" | "fired_piece";
            /** Format: uuid */
            master_id?: string | null;
            /** @default  */
            note: string;
            parts?: components["schemas"]["BlockInRequest"][];
            /**
             * Format: double
             * @description Water to 100 of plaster by mass.
             */
            parts_water?: number;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: date-time */
            poured_at?: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        CastingMasterOut: {
            /** Format: uuid */
            id: string;
            is_ready: boolean;
            label: string;
        };
        CastingOut: {
            /** Format: double */
            capacity_fraction?: number;
            /** Format: double */
            dry_g?: number | null;
            /** Format: int64 */
            generation: number;
            /** Format: uuid */
            id?: string;
            is_in_use?: boolean;
            master: components["schemas"]["CastingMasterOut"];
            /** Format: uuid */
            readonly mould_set_id: string;
            /** Format: double */
            now_g?: number | null;
            /** Format: date-time */
            poured_at?: string | null;
            /** Format: date-time */
            weighed_at?: string | null;
        };
        /** @description Some CastingOut rows, and where the next ones are. */
        CastingOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["CastingOut"][];
        };
        /** @description A warning beside an act that was accepted. */
        CautionOut: {
            code: string;
            detail: string;
        };
        /** @description That is mine; `piece_id` says which of my pieces it is. */
        ClaimInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: uuid */
            found_id: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            piece_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        ClaimOut: {
            /** Format: uuid */
            found_id: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            member: components["schemas"]["PersonNamedOut"];
            piece: components["schemas"]["FoundNamedOut"] | null;
        };
        /** @description Some ClaimOut rows, and where the next ones are. */
        ClaimOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ClaimOut"][];
        };
        ClashActOut: {
            detail: string;
            device: string;
            facts: unknown;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            member: components["schemas"]["PersonNamedOut"];
            verb: string;
            words: string;
            /** Format: date-time */
            written_at: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ClashAnswerInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /**
             * @description * `first` - First
             *     * `second` - Second
             *     * `both` - Both
             * @enum {string}
             */
            choice: "first" | "second" | "both";
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        ClashAnswerOut: {
            clash: components["schemas"]["ClashOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            piece: components["schemas"]["PieceBriefOut"];
        };
        ClashChoiceOut: {
            /**
             * @description * `first` - first
             *     * `second` - second
             *     * `both` - both
             * @enum {string}
             */
            choice: "first" | "second" | "both";
            consequence: string;
        };
        /** @description Two stories of one piece, and what each answer would come to. */
        ClashOut: {
            acts: components["schemas"]["ClashActOut"][];
            asked: components["schemas"]["PersonNamedOut"][];
            choices: components["schemas"]["ClashChoiceOut"][];
            holds: string[];
            /** Format: uuid */
            id: string;
            kind: string;
            may_answer: boolean;
            /** Format: date-time */
            opened_at: string;
            stands_meanwhile: components["schemas"]["ClashStandsOut"];
            /**
             * @description * `open` - open
             *     * `answered` - answered
             *     * `gone` - gone
             * @enum {string}
             */
            state: "open" | "answered" | "gone";
            subject: components["schemas"]["ClashSubjectOut"];
        };
        /** @description Some ClashOut rows, and where the next ones are. */
        ClashOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ClashOut"][];
        };
        ClashStandsOut: {
            place: components["schemas"]["PlaceNamedOut"] | null;
            stage: string;
            state: string;
            words: string;
        };
        ClashSubjectOut: {
            /** Format: uuid */
            id: string;
            kind: string;
            mark: string;
            noun: string;
        };
        /** @description Two stories of one piece, and what each answer would come to. */
        ClashWholeOut: {
            acts: components["schemas"]["ClashActOut"][];
            asked: components["schemas"]["PersonNamedOut"][];
            /** Format: date-time */
            at: string;
            choices: components["schemas"]["ClashChoiceOut"][];
            holds: string[];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            kind: string;
            may_answer: boolean;
            /** Format: date-time */
            opened_at: string;
            stands_meanwhile: components["schemas"]["ClashStandsOut"];
            /**
             * @description * `open` - open
             *     * `answered` - answered
             *     * `gone` - gone
             * @enum {string}
             */
            state: "open" | "answered" | "gone";
            subject: components["schemas"]["ClashSubjectOut"];
        };
        ClockChangeOut: {
            /** Format: date-time */
            at: string;
            words: string;
        };
        ClosedDayFields: {
            /** Format: date */
            date: string;
            /** @default  */
            why: string;
        };
        ClosedDayFieldsRequest: {
            /** Format: date */
            date: string;
            /** @default  */
            why: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ClosingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `closed` - closed
             *     * `cancelled` - cancelled
             *     * `reopened` - reopened
             * @enum {string}
             */
            kind: "closed" | "cancelled" | "reopened";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        ComingOut: {
            cone: string;
            /** Format: date-time */
            cutoff_at: string;
            /** Format: uuid */
            id: string;
            kind: string;
            number: string;
            pieces: number;
            /** Format: date-time */
            starts_at: string;
            state: string;
        };
        /** @description The order as it is now. */
        CommissionActOut: {
            commission: components["schemas"]["CommissionWholeOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            lines: components["schemas"]["OrderLineOut"][];
        };
        /** @description An order; without a number it gets the next one. */
        CommissionInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** @default  */
            client_contact: string;
            client_name: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            lines?: components["schemas"]["OrderLineFieldsRequest"][];
            /** Format: uuid */
            maker_id?: string | null;
            /** @default  */
            note: string;
            number?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: date */
            promised_date?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @default food
             * @enum {string}
             */
            use: "food" | "display";
            what: string;
        };
        CommissionListOut: {
            /** Format: date-time */
            at: string;
            at_risk: components["schemas"]["CommissionRowOut"][];
            closed: components["schemas"]["CommissionRowOut"][];
            journal_seq: number;
            on_course: components["schemas"]["CommissionRowOut"][];
        };
        CommissionLivesOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            pieces: components["schemas"]["PieceLifeOut"][];
        };
        CommissionOut: {
            /** Format: date-time */
            at: string;
            cautions: components["schemas"]["WordOut"][];
            commission: components["schemas"]["CommissionWholeOut"];
            journal_seq: number;
            lines: components["schemas"]["OrderLineOut"][];
            reports: components["schemas"]["TestReportOut"][];
            warnings: components["schemas"]["WordOut"][];
        };
        CommissionRowOut: {
            client_name: string;
            counts: components["schemas"]["OrderCountsOut"];
            days_left: number | null;
            /** Format: uuid */
            id: string;
            is_at_risk: boolean;
            /** Format: date-time */
            judged_at: string | null;
            /** Format: date */
            likely_from: string | null;
            /** Format: date */
            likely_until: string | null;
            maker: components["schemas"]["PersonNamedOut"];
            mine: boolean;
            number: string;
            promise_words: string;
            /** Format: date */
            promised_date: string | null;
            risk_words: string;
            /**
             * @description * `open` - open
             *     * `closed` - closed
             *     * `cancelled` - cancelled
             * @enum {string}
             */
            state: "open" | "closed" | "cancelled";
            /**
             * @description * `food` - food
             *     * `display` - display
             * @enum {string}
             */
            use: "food" | "display";
            what: string;
            words: string;
        };
        CommissionWholeOut: {
            /** Format: date-time */
            cancelled_at: string | null;
            /** @description Only for the owner and the order's own maker. */
            client_contact?: string;
            client_name: string;
            /** Format: date-time */
            closed_at: string | null;
            counts: components["schemas"]["OrderCountsOut"];
            days_left: number | null;
            /** Format: uuid */
            id: string;
            is_at_risk: boolean;
            /** Format: date-time */
            judged_at: string | null;
            /** Format: date */
            likely_from: string | null;
            /** Format: date */
            likely_until: string | null;
            maker: components["schemas"]["PersonNamedOut"];
            may: components["schemas"]["OrderMayOut"];
            mine: boolean;
            number: string;
            promise_words: string;
            /** Format: date */
            promised_date: string | null;
            revision: number;
            risk_words: string;
            /**
             * @description * `open` - open
             *     * `closed` - closed
             *     * `cancelled` - cancelled
             * @enum {string}
             */
            state: "open" | "closed" | "cancelled";
            /** Format: date-time */
            taken_at: string;
            /**
             * @description * `food` - food
             *     * `display` - display
             * @enum {string}
             */
            use: "food" | "display";
            what: string;
            words: string;
        };
        ConeRowInRequest: {
            /** @description As the hand of a clock: 12 upright, 6 down with its tip level with its base. */
            clock_hand?: number | null;
            cone: string;
            level?: number | null;
            /**
             * @description * `guide` - Guide
             *     * `firing` - Firing
             *     * `guard` - Guard
             * @enum {string}
             */
            role: "guide" | "firing" | "guard";
            /** @default  */
            words: string;
        };
        ConeSeenOut: {
            clock_hand: number | null;
            cone: string;
            hand_words: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            level: number | null;
            /**
             * @description * `guide` - Guide
             *     * `firing` - Firing
             *     * `guard` - Guard
             * @enum {string}
             */
            role: "guide" | "firing" | "guard";
            words: string;
        };
        /** @description Some ConeSeenOut rows, and where the next ones are. */
        ConeSeenOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ConeSeenOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ConesInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cones: components["schemas"]["ConeRowInRequest"][];
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        ConesOut: {
            cones: components["schemas"]["ConeSeenOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            warnings: components["schemas"]["WordOut"][];
        };
        ConfidenceOut: {
            /**
             * @description * `guess` - guess
             *     * `checks` - checks
             * @enum {string}
             */
            basis: "guess" | "checks";
            checks: number;
        };
        CoolingOut: {
            /** Format: date-time */
            at: string;
            cautions: components["schemas"]["WordOut"][];
            journal_seq: number;
            opening: components["schemas"]["KilnOpeningOut"] | null;
        };
        CornerOut: {
            /** Format: double */
            elapsed_h: number;
            /** Format: double */
            planned_c: number;
        };
        /** @description Ware that waits for this kind of firing, in the order of the rule. */
        CouldGoOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            rows: components["schemas"]["CouldGoRowOut"][];
            rule: string;
        };
        /** @description A piece that waits, and the rule's sentence on why it stands there. */
        CouldGoRowOut: {
            commission: components["schemas"]["OrderNamedOut"] | null;
            dry_evidence: components["schemas"]["DryEvidenceOut"];
            /** Format: date */
            due_date: string | null;
            /**
             * @description * `fits` - fits
             *     * `doubtful` - doubtful
             *     * `does_not_fit` - does_not_fit
             *     * `unknown` - unknown
             * @enum {string}
             */
            fits: "fits" | "doubtful" | "does_not_fit" | "unknown";
            /** @description Somebody set the rule aside for it. */
            is_put_first: boolean;
            /** Format: double */
            litres: number | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mine: boolean;
            piece: components["schemas"]["PieceNamedOut"];
            place: components["schemas"]["PlaceNamedOut"] | null;
            reason: string;
            refused: components["schemas"]["WordOut"] | null;
            size: components["schemas"]["SizeOut"] | null;
            /** Format: double */
            thickest_mm: number | null;
            ticket: components["schemas"]["TicketBriefOut"] | null;
            /** Format: date-time */
            waiting_since: string;
            waits_days: number;
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description Whether a report speaks for the piece; `words` say what it says, or what is wanting. */
        CoverageOut: {
            code: string;
            report_ids: string[];
            words: string;
        };
        CoverFromInRequest: {
            /** Format: double */
            from_h: number;
            /**
             * @description * `open` - open
             *     * `loose` - loose
             *     * `tucked` - tucked
             *     * `sealed` - sealed
             * @enum {string}
             */
            state: "open" | "loose" | "tucked" | "sealed";
        };
        /** @description What is advised on covering a piece; no `cracking` while none of it stands in the air. */
        CoveringOut: {
            cracking: components["schemas"]["CrackingOut"] | null;
            meeting: components["schemas"]["MeetingOut"] | null;
            steps: components["schemas"]["CoverStepOut"][];
            thin: components["schemas"]["ThinOut"] | null;
        };
        /** @description How the piece is covered; with `part_ids` those parts of it only, otherwise than the rest. */
        CoverInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            part_ids?: string[];
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `open` - Open
             *     * `loose` - Loose
             *     * `tucked` - Tucked
             *     * `sealed` - Sealed
             * @enum {string}
             */
            state: "open" | "loose" | "tucked" | "sealed";
        };
        CoverRowOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            part_id: string | null;
            state: string;
        };
        /** @description Some CoverRowOut rows, and where the next ones are. */
        CoverRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["CoverRowOut"][];
        };
        CoverStepOut: {
            /** Format: date-time */
            at: string;
            /**
             * @description * `open` - open
             *     * `loose` - loose
             *     * `tucked` - tucked
             *     * `sealed` - sealed
             * @enum {string}
             */
            cover: "open" | "loose" | "tucked" | "sealed";
            /** @description the parts it is about; none: the whole piece */
            part_ids: string[];
            words: string;
        };
        CrackingOut: {
            note: string;
            /**
             * @description * `low` - low
             *     * `watch` - watch
             *     * `high` - high
             * @enum {string}
             */
            now: "low" | "watch" | "high";
            /**
             * @description at its worst if nothing is changed
             *
             *     * `low` - low
             *     * `watch` - watch
             *     * `high` - high
             * @enum {string}
             */
            peak: "low" | "watch" | "high";
            reason: string;
        };
        CrumbCheckOut: {
            /** @description Of the casting that was pressed last; null: never pressed. */
            generation: number | null;
            rows: components["schemas"]["CrumbRowOut"][];
        };
        /** @description One pressing, and the pieces that its clay went into. */
        CrumbRowOut: {
            count: number;
            pieces: components["schemas"]["PieceNamedOut"][];
            /** Format: date-time */
            pressed_at: string;
            /** Format: uuid */
            pressing_id: string;
        };
        /** @description Water left, 1 as pressed to 0 at rest with the room's air; `known_points` of it are past. */
        CurveOut: {
            known_points: number;
            p10: number[];
            p50: number[];
            p90: number[];
            t_at: string[];
        };
        /** @description Hand over those pieces, else all that are finished; `closes` null: when no more is wanted. */
        DeliveryInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            closes?: boolean | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            piece_ids?: string[] | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        DeliveryOut: {
            cautions: components["schemas"]["WordOut"][];
            commission: components["schemas"]["CommissionWholeOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            lines: components["schemas"]["OrderLineOut"][];
            pieces: components["schemas"]["PieceBriefOut"][];
        };
        /** @description A form with one or more clay parts; sections are 1 to 80 mm. */
        DesignInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string | null;
            capacity_ml?: number | string | null;
            /** @description Walls over 80 mm that are meant: #/parts/0/thickest_mm. */
            confirmed?: string[];
            /**
             * @description table, cooking, storage; a lid is tested with the vessel it closes.
             *
             *     * `table` - Table
             *     * `cooking` - Cooking
             *     * `storage` - Storage
             *     * `lid` - Lid
             * @enum {string}
             */
            contact?: "table" | "cooking" | "storage" | "lid";
            /** Format: uuid */
            corrects?: string | null;
            footprint_x_mm?: number | string | null;
            footprint_y_mm?: number | string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            height_mm?: number | string | null;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            inside_depth_mm?: number | string | null;
            /**
             * @description The footprint is a circle, its diameter the greater width.
             * @default false
             */
            is_round: boolean;
            name: string;
            /** @default  */
            note: string;
            noun: string;
            parts: components["schemas"]["DesignPartInRequest"][];
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            series: string;
            /** @default true */
            uses_moulds: boolean;
        };
        /** @description A design, and walls above the studio's limit. */
        DesignMadeOut: {
            /** Format: uuid */
            body_id: string | null;
            /** Format: double */
            capacity_ml: number | null;
            /**
             * @description * `table` - Table
             *     * `cooking` - Cooking
             *     * `storage` - Storage
             *     * `lid` - Lid
             * @enum {string}
             */
            contact: "table" | "cooking" | "storage" | "lid";
            /** Format: double */
            footprint_x_mm: number | null;
            /** Format: double */
            footprint_y_mm: number | null;
            /** Format: double */
            height_mm: number | null;
            /** Format: uuid */
            id: string;
            /** Format: double */
            inside_depth_mm: number | null;
            is_round: boolean;
            journal_seq: number;
            name: string;
            noun: string;
            parts: components["schemas"]["DesignPartOut"][];
            revision: number;
            series: string;
            uses_moulds: boolean;
            warnings: components["schemas"]["CautionOut"][];
        };
        /** @description A design with its parts. */
        DesignOut: {
            /** Format: uuid */
            body_id: string | null;
            /** Format: double */
            capacity_ml: number | null;
            /**
             * @description * `table` - Table
             *     * `cooking` - Cooking
             *     * `storage` - Storage
             *     * `lid` - Lid
             * @enum {string}
             */
            contact: "table" | "cooking" | "storage" | "lid";
            /** Format: double */
            footprint_x_mm: number | null;
            /** Format: double */
            footprint_y_mm: number | null;
            /** Format: double */
            height_mm: number | null;
            /** Format: uuid */
            id: string;
            /** Format: double */
            inside_depth_mm: number | null;
            is_round: boolean;
            name: string;
            noun: string;
            parts: components["schemas"]["DesignPartOut"][];
            revision: number;
            series: string;
            uses_moulds: boolean;
        };
        /** @description Some DesignOut rows, and where the next ones are. */
        DesignOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["DesignOut"][];
        };
        /** @description One clay part with its sections as pressed; with an `id`, the part that is changed. */
        DesignPartInRequest: {
            clay_g?: number | string | null;
            /** @default 1 */
            count: number;
            footprint_x_mm?: number | string | null;
            footprint_y_mm?: number | string | null;
            height_mm?: number | string | null;
            /** Format: uuid */
            id?: string;
            /** @default true */
            is_required: boolean;
            /**
             * @description * `pressed` - Pressed
             *     * `thrown` - Thrown
             *     * `coiled` - Coiled
             *     * `sprigged` - Sprigged
             *     * `carved` - Carved
             * @default pressed
             * @enum {string}
             */
            method: "pressed" | "thrown" | "coiled" | "sprigged" | "carved";
            role: string;
            /**
             * @description * `flat` - Flat
             *     * `rod` - Rod
             *     * `lump` - Lump
             * @default flat
             * @enum {string}
             */
            shape: "flat" | "rod" | "lump";
            thickest_mm: number | string;
            thinnest_mm: number | string;
        };
        DesignPartOut: {
            /** Format: double */
            clay_g?: number | null;
            /** Format: int64 */
            count?: number;
            /** Format: double */
            footprint_x_mm?: number | null;
            /** Format: double */
            footprint_y_mm?: number | null;
            /** Format: double */
            height_mm?: number | null;
            /** Format: uuid */
            id?: string;
            is_required?: boolean;
            /**
             * @description * `pressed` - Pressed
             *     * `thrown` - Thrown
             *     * `coiled` - Coiled
             *     * `sprigged` - Sprigged
             *     * `carved` - Carved
             * @enum {string}
             */
            method?: "pressed" | "thrown" | "coiled" | "sprigged" | "carved";
            /** Format: int64 */
            order?: number;
            role: string;
            /**
             * @description * `flat` - Flat
             *     * `rod` - Rod
             *     * `lump` - Lump
             * @enum {string}
             */
            shape?: "flat" | "rod" | "lump";
            /** Format: double */
            thickest_mm: number;
            /** Format: double */
            thinnest_mm: number;
        };
        /** @description What every answer to an act says. */
        DeviceChangedOut: {
            device: components["schemas"]["DeviceOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** @description Of a new shared phone: `Authorization: Device <key>`. */
            key?: string;
        };
        /** @description The id is the device's own; from then on it goes into `X-Natch-Device`. */
        DeviceInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description A phone for everybody, made by an owner; its key is shown once.
             * @default false
             */
            is_shared: boolean;
            name: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        DeviceOut: {
            /** Format: date-time */
            added_at: string;
            /** Format: uuid */
            id?: string;
            readonly is_locked: boolean;
            is_shared?: boolean;
            /** Format: uuid */
            member_id: string | null;
            name: string;
            /** Format: date-time */
            revoked_at?: string | null;
            /** Format: date-time */
            seen_at?: string | null;
        };
        /** @description Some DeviceOut rows, and where the next ones are. */
        DeviceOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["DeviceOut"][];
        };
        /** @description What a kiln is doing; the state of its load, or empty, or out of use. */
        DoingOut: {
            load: components["schemas"]["LoadNamedOut"] | null;
            reading: components["schemas"]["LastReadingOut"] | null;
            /** Format: date-time */
            till: string | null;
            watcher: components["schemas"]["PersonNamedOut"] | null;
            word: string;
            words: string;
        };
        DryEvidenceOut: {
            detail: string;
            ok: boolean;
            /**
             * @description * `check` - check
             *     * `weighings` - weighings
             *     * `none` - none
             * @enum {string}
             */
            word: "check" | "weighings" | "none";
        };
        DryingOut: {
            assumed: string[];
            /** Format: date-time */
            at: string;
            /** Format: date-time */
            computed_at: string | null;
            confidence: components["schemas"]["ConfidenceOut"];
            covering: components["schemas"]["CoveringOut"];
            curve: components["schemas"]["CurveOut"] | null;
            evidence: components["schemas"]["EvidenceOut"][];
            inputs: {
                [key: string]: unknown;
            };
            journal_seq: number;
            sentence: string;
            sources: string[];
            unreachable: string[];
            verdict: string;
            weighed: components["schemas"]["WeighedOut"] | null;
            windows: components["schemas"]["WindowsOut"] | null;
        };
        /** @description The same in a room of the studio: what was learned of its air and of such clay counts. */
        DryingSumHereInRequest: {
            air?: components["schemas"]["AirSumInRequest"];
            /**
             * Format: double
             * @description How fast the air moves.
             * @default 0
             */
            air_m_s: number;
            air_series?: components["schemas"]["AirFromInRequest"][];
            /**
             * Format: date-time
             * @description The pressing; now when left out.
             */
            begins_at?: string;
            /**
             * @description * `red_earthenware` - red_earthenware
             *     * `white_earthenware` - white_earthenware
             *     * `grogged_stoneware` - grogged_stoneware
             *     * `smooth_stoneware` - smooth_stoneware
             *     * `porcelain` - porcelain
             *     * `terracotta_crank` - terracotta_crank
             * @default red_earthenware
             * @enum {string}
             */
            clay: "red_earthenware" | "white_earthenware" | "grogged_stoneware" | "smooth_stoneware" | "porcelain" | "terracotta_crank";
            /**
             * @description * `open` - open
             *     * `loose` - loose
             *     * `tucked` - tucked
             *     * `sealed` - sealed
             * @enum {string}
             */
            cover?: "open" | "loose" | "tucked" | "sealed";
            covers?: components["schemas"]["CoverFromInRequest"][];
            /**
             * @description What the inner face of a wall meets: the hollow of a form, a board, free air, or nothing.
             *
             *     * `hollow` - hollow
             *     * `board` - board
             *     * `free` - free
             *     * `shut` - shut
             * @default hollow
             * @enum {string}
             */
            inside: "hollow" | "board" | "free" | "shut";
            moistures?: components["schemas"]["MoisturesInRequest"];
            mould?: components["schemas"]["MouldSumInRequest"] | null;
            /** Format: uuid */
            place_id?: string | null;
            /**
             * @description * `flat` - flat
             *     * `rod` - rod
             *     * `lump` - lump
             * @default flat
             * @enum {string}
             */
            shape: "flat" | "rod" | "lump";
            thickest_mm: number | string;
        };
        /** @description Windows and curve as of a piece; both null where no estimate would be sound. */
        DryingSumHereOut: {
            /** Format: date-time */
            begins_at: string;
            confidence: components["schemas"]["ConfidenceOut"];
            curve: components["schemas"]["CurveOut"] | null;
            rests_on: string[];
            source: string;
            unreachable: string[];
            warnings: components["schemas"]["SumWarningOut"][];
            windows: components["schemas"]["WindowsOut"] | null;
            working: string[];
        };
        /** @description A section, its clay, its air, its covers, its mould. */
        DryingSumInRequest: {
            air?: components["schemas"]["AirSumInRequest"];
            /**
             * Format: double
             * @description How fast the air moves.
             * @default 0
             */
            air_m_s: number;
            air_series?: components["schemas"]["AirFromInRequest"][];
            /**
             * Format: date-time
             * @description The pressing; now when left out.
             */
            begins_at?: string;
            /**
             * @description * `red_earthenware` - red_earthenware
             *     * `white_earthenware` - white_earthenware
             *     * `grogged_stoneware` - grogged_stoneware
             *     * `smooth_stoneware` - smooth_stoneware
             *     * `porcelain` - porcelain
             *     * `terracotta_crank` - terracotta_crank
             * @default red_earthenware
             * @enum {string}
             */
            clay: "red_earthenware" | "white_earthenware" | "grogged_stoneware" | "smooth_stoneware" | "porcelain" | "terracotta_crank";
            /**
             * @description * `open` - open
             *     * `loose` - loose
             *     * `tucked` - tucked
             *     * `sealed` - sealed
             * @enum {string}
             */
            cover?: "open" | "loose" | "tucked" | "sealed";
            covers?: components["schemas"]["CoverFromInRequest"][];
            /**
             * @description What the inner face of a wall meets: the hollow of a form, a board, free air, or nothing.
             *
             *     * `hollow` - hollow
             *     * `board` - board
             *     * `free` - free
             *     * `shut` - shut
             * @default hollow
             * @enum {string}
             */
            inside: "hollow" | "board" | "free" | "shut";
            moistures?: components["schemas"]["MoisturesInRequest"];
            mould?: components["schemas"]["MouldSumInRequest"] | null;
            /**
             * @description * `flat` - flat
             *     * `rod` - rod
             *     * `lump` - lump
             * @default flat
             * @enum {string}
             */
            shape: "flat" | "rod" | "lump";
            thickest_mm: number | string;
        };
        /** @description Windows and curve as of a piece; both null where no estimate would be sound. */
        DryingSumOut: {
            /** Format: date-time */
            begins_at: string;
            confidence: components["schemas"]["ConfidenceOut"];
            curve: components["schemas"]["CurveOut"] | null;
            source: string;
            unreachable: string[];
            warnings: components["schemas"]["SumWarningOut"][];
            windows: components["schemas"]["WindowsOut"] | null;
            working: string[];
        };
        /** @description How damp a casting is; the fraction is of the water it can hold. */
        DrynessOut: {
            /**
             * @description Weighed; weighed, with the presses since reckoned in; only counted; nothing.
             *
             *     * `weighed` - weighed
             *     * `reckoned` - reckoned
             *     * `presses` - presses
             *     * `nothing` - nothing
             * @enum {string}
             */
            basis: "weighed" | "reckoned" | "presses" | "nothing";
            /** Format: double */
            free_water_fraction: number | null;
            /** @description Presses until it should rest, if it does not dry between. */
            presses_left: number | null;
            presses_since_dry: number;
            /**
             * @description * `unknown` - unknown
             *     * `dry` - dry
             *     * `usable` - usable
             *     * `rest` - rest
             * @enum {string}
             */
            word: "unknown" | "dry" | "usable" | "rest";
        };
        /** @description Given back to who claims it (`claim_id` where two do), or let go after its notice. */
        EndingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            claim_id?: string | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `returned` - returned
             *     * `disposed` - disposed
             * @enum {string}
             */
            kind: "returned" | "disposed";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        EvidenceOut: {
            /** Format: date-time */
            at: string;
            /**
             * @description * `weighing` - weighing
             *     * `check` - check
             *     * `cover` - cover
             *     * `move` - move
             * @enum {string}
             */
            kind: "weighing" | "check" | "cover" | "move";
            /** Format: double */
            mass_g?: number;
            member: string;
            /** Format: double */
            water_left?: number | null;
            words?: string;
        };
        FeeBoxOut: {
            /** Format: double */
            height_mm: number;
            /** Format: double */
            x_mm: number;
            /** Format: double */
            y_mm: number;
        };
        FeeLineOut: {
            box: components["schemas"]["FeeBoxOut"] | null;
            count: number;
            /** @description What did not fire is not charged. */
            is_charged: boolean;
            /** Format: double */
            litres: number;
            mark: string;
            minor: number | null;
            /** Format: uuid */
            placement_id: string;
            /** @description The how manieth firing: second glaze firing. */
            which: string;
        };
        FeeRecordedShareOut: {
            /**
             * Format: double
             * @description As reckoned when it was recorded.
             */
            litres: number;
            mine: boolean;
            minor: number | null;
            person: components["schemas"]["PersonNamedOut"] | null;
            /**
             * Format: double
             * @description As somebody said instead.
             */
            said_l: number | null;
            why: string;
        };
        /** @description What every answer to an act says. */
        FeesActOut: {
            fees: components["schemas"]["FeesOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
        };
        FeeShareOut: {
            lines: components["schemas"]["FeeLineOut"][];
            /** Format: double */
            litres: number;
            mine: boolean;
            minor: number | null;
            person: components["schemas"]["PersonNamedOut"] | null;
        };
        /** @description What a load cost, to be shared by volume; without it everybody pays by the tariff. */
        FeesInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            cost_minor?: number | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            litres?: components["schemas"]["LitresSaidInRequest"][];
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** @default  */
            words: string;
        };
        /** @description What a load costs each maker. Who may see only their own prices sees only their own share. */
        FeesOut: {
            /** Format: date-time */
            at: string;
            cost_minor: number | null;
            currency: string;
            journal_seq: number;
            load: components["schemas"]["LoadNamedOut"];
            may_record: boolean;
            /**
             * @description * `wet` - Wet
             *     * `dry` - Dry
             *     * `bisque` - Bisque
             *     * `fired` - Fired
             * @enum {string}
             */
            measured: "wet" | "dry" | "bisque" | "fired";
            per_litre_minor: number | null;
            recorded: components["schemas"]["FeesRecordedOut"] | null;
            shares: components["schemas"]["FeeShareOut"][];
            /**
             * @description Due once it is unloaded.
             *
             *     * `estimate` - estimate
             *     * `due` - due
             *     * `nothing` - nothing
             * @enum {string}
             */
            stage: "estimate" | "due" | "nothing";
            /** @description Null where there is no tariff, and to who sees only their own. */
            total_minor: number | null;
            words: string;
        };
        /** @description What was recorded last; it stands until it is recorded anew. */
        FeesRecordedOut: {
            /**
             * @description * `tariff` - tariff
             *     * `cost` - cost
             * @enum {string}
             */
            basis: "tariff" | "cost";
            cost_minor: number | null;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            member: components["schemas"]["PersonNamedOut"];
            shares: components["schemas"]["FeeRecordedShareOut"][];
            words: string;
        };
        FiredOut: {
            cone: string;
            kiln: string;
            load: string;
        };
        FiringCountsOut: {
            bisque: number;
            glaze: number;
        };
        FiringTicketOut: {
            cone: string;
            /**
             * @description * `crawled` - Crawled
             *     * `blistered` - Blistered
             *     * `pinholed` - Pinholed
             *     * `crazed` - Crazed
             *     * `underfired` - Underfired
             *     * `thin` - Thin
             *     * `ran` - Ran
             *     * `colour` - Colour
             *     * `other` - Other
             * @enum {string}
             */
            fault: "crawled" | "blistered" | "pinholed" | "crazed" | "underfired" | "thin" | "ran" | "colour" | "other" | "";
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            kind: string;
            mended: ("ground" | "washed" | "filled" | "glazed_again" | "glazed_thicker" | "nothing")[];
            /** @description What was wrong, and what was mended since. */
            readonly why: string;
            words: string;
        };
        /** @description Some FiringTicketOut rows, and where the next ones are. */
        FiringTicketOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["FiringTicketOut"][];
        };
        /** @description Of pieces whose first glaze firing was judged; fired again counts as not good. */
        FirstTimeOut: {
            good: number;
            of: number;
            words: string;
        };
        FitItemOut: {
            /** Format: double */
            depth_mm: number;
            is_round: boolean;
            mark: string;
            /** Format: uuid */
            piece_id: string | null;
            /** Format: uuid */
            placement_id: string | null;
            /** Format: double */
            rotation_deg: number;
            /**
             * Format: double
             * @description As it stands, turned.
             */
            width_mm: number;
            /**
             * Format: double
             * @description Its middle, from the middle of the shelf.
             */
            x_mm: number;
            /** Format: double */
            y_mm: number;
        };
        FitLevelOut: {
            /** Format: double */
            floor_mm: number;
            /** Format: double */
            height_mm: number;
            items: components["schemas"]["FitItemOut"][];
            /** @description 1 is the lowest. */
            level: number;
            posts: components["schemas"]["PostSpotOut"][];
            room_left: components["schemas"]["RoomLeftOut"];
            shelf: components["schemas"]["ShelfShapeOut"];
        };
        FitOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            /** @description Further layers of ware as high as here. */
            layers_left: number;
            left_out: string[];
            levels: components["schemas"]["FitLevelOut"][];
            reasons: components["schemas"]["FitReasonOut"][];
            sentence: string;
            /**
             * Format: double
             * @description How high ware on one more shelf may be; null for no shelf.
             */
            spare_ware_mm: number | null;
            tallest: components["schemas"]["TallestOut"] | null;
            /** Format: double */
            used_height_mm: number;
            /**
             * @description * `fits` - fits
             *     * `doubtful` - doubtful
             *     * `does_not_fit` - does_not_fit
             * @enum {string}
             */
            verdict: "fits" | "doubtful" | "does_not_fit";
        };
        FitReasonOut: {
            code: string;
            detail: string;
            level: number | null;
            /** Format: uuid */
            piece_id: string | null;
            /** Format: uuid */
            placement_id: string | null;
        };
        /** @description A piece as something to eat from. */
        FoodContactOut: {
            coverage: components["schemas"]["CoverageOut"];
            design: string;
            /** Format: uuid */
            design_id: string;
            fired: components["schemas"]["FiredOut"] | null;
            glaze_batches: components["schemas"]["GlazeNamedOut"][];
            how_tested: string;
            jurisdiction: string;
            limits: components["schemas"]["LimitsOut"] | null;
            mark: string;
            /** Format: uuid */
            piece_id: string;
            sources: string[];
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @enum {string}
             */
            use: "food" | "display";
        };
        /** @description What every answer to an act says. */
        FoundActOut: {
            found: components["schemas"]["FoundWholeOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
        };
        /** @description Something stood somewhere without a name: its size, its clay, how far along it looks. */
        FoundInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            height_mm?: number | string | null;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `drying` - drying
             *     * `bone_dry` - bone_dry
             *     * `bisqued` - bisqued
             *     * `glazed` - glazed
             *     * `glaze_fired` - glaze_fired
             * @default
             * @enum {string}
             */
            looks: "drying" | "bone_dry" | "bisqued" | "glazed" | "glaze_fired" | "";
            /** @default  */
            mark_seen: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: uuid
             * @description Its record, where there is one without a maker.
             */
            piece_id?: string | null;
            /** Format: uuid */
            place_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            what: string;
            x_mm?: number | string | null;
            y_mm?: number | string | null;
        };
        /** @description What this member may do about it now. */
        FoundMayOut: {
            dispose: boolean;
            give_back: boolean;
        };
        FoundNamedOut: {
            /** Format: uuid */
            id: string;
            mark: string;
        };
        FoundOut: {
            body: components["schemas"]["BodyNamedOut"] | null;
            claims_count: number;
            /** Format: date-time */
            ended_at: string | null;
            /** Format: date-time */
            found_at: string;
            found_by: components["schemas"]["PersonNamedOut"];
            /** Format: double */
            height_mm: number | null;
            /** Format: uuid */
            id: string;
            is_notice_past: boolean;
            looks: string;
            looks_words: string;
            mark_seen: string;
            /** Format: date */
            notice_date: string;
            /** @description Of the thing, newest first. */
            photo_ids: string[];
            piece: components["schemas"]["FoundNamedOut"] | null;
            place: components["schemas"]["PlaceNamedOut"] | null;
            returned_to: components["schemas"]["PersonNamedOut"] | null;
            /**
             * @description * `open` - Open
             *     * `returned` - Returned
             *     * `disposed` - Disposed
             * @enum {string}
             */
            state: "open" | "returned" | "disposed";
            what: string;
            /** Format: double */
            x_mm: number | null;
            /** Format: double */
            y_mm: number | null;
        };
        /** @description Some FoundOut rows, and where the next ones are. */
        FoundOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["FoundOut"][];
        };
        FoundWholeOut: {
            /** @description Who was asked already; each is asked once. */
            asked: string[];
            body: components["schemas"]["BodyNamedOut"] | null;
            candidates: components["schemas"]["LikelyOwnerOut"][];
            claims: components["schemas"]["ClaimOut"][];
            claims_count: number;
            /** Format: date-time */
            ended_at: string | null;
            /** Format: date-time */
            found_at: string;
            found_by: components["schemas"]["PersonNamedOut"];
            /** Format: double */
            height_mm: number | null;
            /** Format: uuid */
            id: string;
            is_notice_past: boolean;
            looks: string;
            looks_words: string;
            mark_seen: string;
            may: components["schemas"]["FoundMayOut"];
            /** Format: date */
            notice_date: string;
            notice_words: string;
            /** @description Of the thing, newest first. */
            photo_ids: string[];
            piece: components["schemas"]["FoundNamedOut"] | null;
            place: components["schemas"]["PlaceNamedOut"] | null;
            returned_to: components["schemas"]["PersonNamedOut"] | null;
            /**
             * @description * `open` - Open
             *     * `returned` - Returned
             *     * `disposed` - Disposed
             * @enum {string}
             */
            state: "open" | "returned" | "disposed";
            what: string;
            /** Format: double */
            x_mm: number | null;
            /** Format: double */
            y_mm: number | null;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        GlazeBatchInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            caution?: string;
            cone?: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: double
             * @description Of the slop as it was dipped.
             */
            density_g_per_l?: number | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            label: string;
            /** Format: uuid */
            mixed_by_id?: string | null;
            /** Format: date */
            mixed_on?: string | null;
            name: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        GlazeBatchOut: {
            caution?: string;
            readonly cautions: string[];
            cone?: string;
            /** Format: double */
            density_g_per_l?: number | null;
            /** Format: uuid */
            id?: string;
            label: string;
            readonly mixed_by: string | null;
            /** Format: date */
            mixed_on?: string | null;
            name: string;
        };
        /** @description Some GlazeBatchOut rows, and where the next ones are. */
        GlazeBatchOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["GlazeBatchOut"][];
        };
        GlazeNamedOut: {
            /** Format: uuid */
            id: string;
            label: string;
        };
        HeldActOut: {
            body: unknown;
            device: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id?: string;
            member: components["schemas"]["JournalPersonOut"];
            path: string;
            /**
             * @description * `left` - Left
             *     * `signed_off` - Signed Off
             * @enum {string}
             */
            why: "left" | "signed_off";
            /** Format: date-time */
            written_at: string;
        };
        /** @description Some HeldActOut rows, and where the next ones are. */
        HeldActOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["HeldActOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        HeldAnswerInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @description Take it into the story as it was sent, or not. */
            is_taken: boolean;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        HeldAnswerOut: {
            /** Format: uuid */
            id: string;
            is_taken: boolean;
            journal_seq: number;
        };
        /** @description Something that was found, the best fit first. */
        HitOut: {
            /** Format: uuid */
            id: string;
            /** @description Its whole name was asked for. */
            is_exact: boolean;
            /**
             * @description * `piece` - piece
             *     * `order` - order
             *     * `mould` - mould
             *     * `place` - place
             *     * `load` - load
             *     * `person` - person
             *     * `found` - found
             * @enum {string}
             */
            kind: "piece" | "order" | "mould" | "place" | "load" | "person" | "found";
            name: string;
            /** @description What tells it apart from others of that name. */
            words: string;
        };
        /** @description Somebody to pick on a shared phone. */
        HolderOut: {
            first_name: string;
            readonly has_pin: boolean;
            /** Format: uuid */
            id: string;
            initials: string;
        };
        HoursFields: {
            closes: string;
            opens: string;
            /** @description Monday is 0. */
            weekday: number;
        };
        HoursFieldsRequest: {
            closes: string;
            opens: string;
            /** @description Monday is 0. */
            weekday: number;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        InspectionInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * @description * `crisp` - Crisp
             *     * `softening` - Softening
             *     * `worn` - Worn
             *     * `chipped` - Chipped
             * @enum {string}
             */
            finding: "crisp" | "softening" | "worn" | "chipped";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /** Format: uuid */
            part_id: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        InspectionRowOut: {
            /**
             * @description * `crisp` - Crisp
             *     * `softening` - Softening
             *     * `worn` - Worn
             *     * `chipped` - Chipped
             * @enum {string}
             */
            finding: "crisp" | "softening" | "worn" | "chipped";
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id?: string;
            /** Format: uuid */
            readonly mould_part_id: string;
            readonly photo_ids: string[];
        };
        /** @description Some InspectionRowOut rows, and where the next ones are. */
        InspectionRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["InspectionRowOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        InvitationInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** @default 7 */
            days: number;
            email?: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            roles: ("owner" | "maker" | "helper" | "technician")[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description The new invitation with its link, which is shown this once. */
        InvitationMadeOut: {
            email?: string;
            /** Format: date-time */
            expires_at: string;
            /** Format: uuid */
            id: string;
            /** Format: date-time */
            invited_at: string;
            /** Format: uuid */
            invited_by_id: string;
            journal_seq: number;
            /** @description Where its holder takes it, on this server. */
            link: string;
            roles?: unknown;
            readonly state: string;
            /** Format: uuid */
            taken_by_id: string | null;
            token: string;
        };
        InvitationOut: {
            email?: string;
            /** Format: date-time */
            expires_at: string;
            /** Format: uuid */
            id?: string;
            /** Format: date-time */
            invited_at: string;
            /** Format: uuid */
            invited_by_id: string;
            roles?: unknown;
            readonly state: string;
            /** Format: uuid */
            taken_by_id: string | null;
        };
        /** @description Some InvitationOut rows, and where the next ones are. */
        InvitationOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["InvitationOut"][];
        };
        JoinRowOut: {
            /** Format: uuid */
            clash_id: string | null;
            confidence: components["schemas"]["ConfidenceOut"];
            /** @description what brings its parts to meet */
            cover_next: components["schemas"]["CoverStepOut"] | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mine: boolean;
            parts: components["schemas"]["PartNamedOut"][];
            piece: components["schemas"]["PieceNamedOut"];
            place: components["schemas"]["PlaceNamedOut"] | null;
            reason: string;
            /** Format: date-time */
            until: string | null;
            /**
             * @description * `now` - now
             *     * `wait` - wait
             *     * `too_stiff` - too_stiff
             * @enum {string}
             */
            verdict: "now" | "wait" | "too_stiff";
            window: components["schemas"]["WindowOut"] | null;
        };
        JournalEntryOut: {
            as_typed?: unknown;
            /** Format: double */
            clock_offset_s?: number;
            /**
             * Format: uuid
             * @description The act that took this one back or put it right.
             */
            corrected_by: string | null;
            /** Format: uuid */
            corrects?: string | null;
            device: string;
            facts?: unknown;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** @description Written so long after it happened that both times are worth showing. */
            readonly is_late: boolean;
            member: components["schemas"]["JournalPersonOut"];
            notes: components["schemas"]["JournalNoteOut"][];
            /** @description Photos said with it. */
            readonly photo_ids: string[];
            /** Format: int64 */
            seq: number;
            subjects: components["schemas"]["JournalSubjectOut"][];
            verb: string;
            /** Format: date-time */
            written_at: string;
        };
        /** @description Some JournalEntryOut rows, and where the next ones are. */
        JournalEntryOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["JournalEntryOut"][];
        };
        JournalNoteOut: {
            /** Format: date-time */
            blanked_at: string | null;
            text: string;
        };
        JournalPersonOut: {
            first_name: string;
            /** Format: uuid */
            id: string;
            initials: string;
        };
        JournalSubjectOut: {
            /** Format: uuid */
            id: string;
            kind: string;
        };
        /** @description A report, with the limits the tested ware falls under and how its results stand to them. */
        JudgedReportOut: {
            /** Format: double */
            area_dm2: number | null;
            cadmium_is_below: boolean;
            /** Format: double */
            cadmium_value: number;
            /** Format: uuid */
            commission_id: string | null;
            contact: string;
            /** Format: double */
            depth_mm: number | null;
            glaze: string;
            glaze_batch: components["schemas"]["GlazeNamedOut"] | null;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            is_lid_tested: boolean;
            laboratory: string;
            lead_is_below: boolean;
            /** Format: double */
            lead_value: number;
            lid_cadmium_is_below: boolean;
            /** Format: double */
            lid_cadmium_mg: number | null;
            lid_lead_is_below: boolean;
            /** Format: double */
            lid_lead_mg: number | null;
            limits: components["schemas"]["LimitsOut"] | null;
            member: components["schemas"]["PersonNamedOut"];
            /** Format: uuid */
            occasion_id: string | null;
            occasion_name: string;
            piece: components["schemas"]["ReportedPieceOut"] | null;
            /** Format: date */
            reported_on: string;
            /**
             * @description * `mg_per_l` - Per Litre
             *     * `mg_per_dm2` - Per Area
             * @enum {string}
             */
            unit: "mg_per_l" | "mg_per_dm2";
            verdict: components["schemas"]["VerdictOut"];
            /** Format: double */
            volume_ml: number | null;
        };
        /** @description Some JudgedReportOut rows, and where the next ones are. */
        JudgedReportOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["JudgedReportOut"][];
        };
        /** @description What every answer to an act says. */
        KilnActOut: {
            affected: components["schemas"]["LoadNamedOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            kiln: components["schemas"]["KilnOut"];
        };
        /** @description A kiln is out of use or in use again. Out of use it takes no new load; all else is logged. */
        KilnEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `out_of_use` - Out Of Use
             *     * `in_use` - In Use
             * @enum {string}
             */
            kind: "out_of_use" | "in_use";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        KilnEventOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            kind: string;
            reason: string;
        };
        /** @description Some KilnEventOut rows, and where the next ones are. */
        KilnEventOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["KilnEventOut"][];
        };
        /** @description What the book of a kiln says, in words; whether it may be used is a person's to say. */
        KilnHealthOut: {
            /** Format: date */
            elements_since: string | null;
            /** @description Firings and hot hours since their change. */
            elements_words: string;
            /** @description What a technician should know; empty where nothing is. */
            notes: components["schemas"]["WordOut"][];
            /** @description Since the elements were changed, oldest first. */
            ohms: components["schemas"]["OhmsOut"][];
            ohms_words: string;
            sensor_words: string;
            shelf_count: number | null;
            /**
             * @description What the cones of two loads agree on, else empty.
             *
             *     * `hot` - hot
             *     * `cool` - cool
             *     * `on` - on
             *     * `` -
             * @enum {string}
             */
            trend: "hot" | "cool" | "on" | "";
        };
        /** @description A kiln; without `place_id` it gets a place of its own, in `parent_place_id` if given. */
        KilnInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /**
             * @description * `rect` - Rect
             *     * `round` - Round
             * @enum {string}
             */
            chamber: "rect" | "round";
            /**
             * Format: double
             * @description How fast it cooled before: share of its heat above the air lost in an hour.
             */
            cooling_k_per_h?: number | null;
            /** Format: uuid */
            corrects?: string | null;
            depth_mm?: number | string | null;
            diameter_mm?: number | string | null;
            /** Format: date */
            elements_changed_on?: string | null;
            firings_before?: number;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            height_mm: number | string;
            /** Format: double */
            hot_hours_before?: number;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `front` - Front
             *     * `top` - Top
             * @enum {string}
             */
            kind: "front" | "top";
            name: string;
            /** @default  */
            note: string;
            number: string;
            /** Format: uuid */
            parent_place_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            posts?: components["schemas"]["PostInRequest"][];
            remarks?: string;
            sensor_firings_before?: number;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            shelves?: components["schemas"]["ShelfInRequest"][];
            top_c: number | string;
            width_mm?: number | string | null;
        };
        KilnNamedOut: {
            /** Format: uuid */
            id: string;
            name: string;
            number: string;
            /** Format: uuid */
            place_id: string;
        };
        /** @description When a kiln may likely be opened; only a measured temperature opens it. */
        KilnOpeningOut: {
            /** Format: double */
            air_c: number;
            /**
             * @description * `readings` - readings
             *     * `known` - known
             *     * `guess` - guess
             * @enum {string}
             */
            basis: "readings" | "known" | "guess";
            /** Format: date-time */
            early: string | null;
            /** Format: double */
            k_per_h: number | null;
            /** Format: date-time */
            last_at: string | null;
            /** Format: double */
            last_c: number | null;
            /** Format: date-time */
            late: string | null;
            /** Format: date-time */
            likely: string | null;
            /** Format: double */
            limit_c: number;
            /**
             * Format: date-time
             * @description When somebody is in first, once it is likely cool enough.
             */
            staffed_at: string | null;
            words: string;
        };
        /** @description A kiln, and what it is doing now. */
        KilnOut: {
            /**
             * @description * `rect` - rect
             *     * `round` - round
             * @enum {string}
             */
            chamber: "rect" | "round";
            /** Format: double */
            cooling_k_per_h: number | null;
            /** Format: double */
            depth_mm: number | null;
            /** Format: double */
            diameter_mm: number | null;
            doing: components["schemas"]["DoingOut"];
            /** Format: date */
            elements_changed_on: string | null;
            /** @description Since its elements were changed; what was taken over counts until then. */
            firings: number;
            firings_before: number;
            health: components["schemas"]["KilnHealthOut"];
            /** Format: double */
            height_mm: number;
            /**
             * Format: double
             * @description Hours driven above 600 °C.
             */
            hot_h: number;
            /** Format: double */
            hot_hours_before: number;
            /** Format: uuid */
            id: string;
            is_out_of_use: boolean;
            /**
             * @description * `front` - front
             *     * `top` - top
             * @enum {string}
             */
            kind: "front" | "top";
            /** Format: double */
            litres: number;
            name: string;
            next_loads: components["schemas"]["ComingOut"][];
            number: string;
            opening: components["schemas"]["KilnOpeningOut"] | null;
            out_of_use_reason: string;
            /** Format: date-time */
            out_of_use_since: string | null;
            place: components["schemas"]["PlaceNamedOut"];
            posts: components["schemas"]["PostOut"][];
            remarks: string;
            revision: number;
            sensor_firings: number;
            sensor_firings_before: number;
            shelves: components["schemas"]["ShelfOut"][];
            /** Format: double */
            top_c: number;
            /** Format: double */
            width_mm: number | null;
        };
        KilnReadingOut: {
            /** Format: uuid */
            act_id: string;
            /** Format: double */
            elapsed_h: number | null;
            /** Format: uuid */
            id: string;
            /** Format: double */
            instead_c: number | null;
            member: components["schemas"]["PersonNamedOut"];
            /** Format: double */
            reading_c: number;
            /** Format: double */
            set_c: number | null;
            /** Format: date-time */
            taken_at: string;
            /**
             * @description * `taken` - Taken
             *     * `asked` - Asked
             *     * `over_top` - Over Top
             *     * `left_out` - Left Out
             * @enum {string}
             */
            use: "taken" | "asked" | "over_top" | "left_out";
            why: string;
            words: string;
        };
        /** @description Some KilnReadingOut rows, and where the next ones are. */
        KilnReadingOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["KilnReadingOut"][];
        };
        KilnReadingRowInRequest: {
            reading_c: number | string;
            set_c?: number | string | null;
            /** Format: date-time */
            taken_at: string;
            /** @default  */
            words: string;
        };
        /** @description One reading, taken at `happened_at`; or several under `readings`, or a table as text/csv. */
        KilnReadingsInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            reading_c?: number | string;
            readings?: components["schemas"]["KilnReadingRowInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            set_c?: number | string | null;
            table?: string;
            /** @default  */
            words: string;
        };
        /** @description What every answer to an act says. */
        KilnReadOut: {
            cautions: components["schemas"]["WordOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            passed_over: string[];
            readings: components["schemas"]["KilnReadingOut"][];
            /** @description Readings that were here already. */
            repeated: number;
            stored: number;
            warnings: components["schemas"]["ReadingDoubtOut"][];
        };
        KilnsOut: {
            /** Format: date-time */
            at: string;
            cautions: components["schemas"]["WordOut"][];
            journal_seq: number;
            results: components["schemas"]["KilnOut"][];
        };
        LastReadingOut: {
            /** Format: double */
            reading_c: number;
            /** Format: date-time */
            taken_at: string;
        };
        LatestPressOut: {
            /** Format: double */
            confidence: number;
            /** Format: date */
            date: string;
            words: string;
        };
        /** @description Whose ware gets a layer, in the order of the rule; the others with why not. */
        LayerOut: {
            /** Format: double */
            left_l: number;
            offer: string;
            put_off: components["schemas"]["PutOffOut"][];
            /** Format: double */
            room_l: number;
            taken: string[];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        LeavingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * Format: date-time
             * @description From then on; null when they stay.
             */
            leaves_at: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        LeavingOut: {
            has_left: boolean;
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** Format: date-time */
            leaves_at: string | null;
        };
        LikelyOwnerOut: {
            member: components["schemas"]["PersonNamedOut"];
            piece: components["schemas"]["LikelyPieceOut"];
            why: string[];
        };
        LikelyPieceOut: {
            /** Format: uuid */
            id: string;
            mark: string;
            noun: string;
            state_words: string;
        };
        /** @description What may be given off by ware of its category. */
        LimitsOut: {
            /** Format: double */
            cadmium: number;
            /** Format: double */
            lead: number;
            /**
             * @description * `flat` - flat
             *     * `fillable` - fillable
             *     * `cooking` - cooking
             * @enum {string}
             */
            name: "flat" | "fillable" | "cooking";
            /**
             * @description * `mg_per_l` - Per Litre
             *     * `mg_per_dm2` - Per Area
             * @enum {string}
             */
            unit: "mg_per_l" | "mg_per_dm2";
            words: string;
        };
        /** @description What every answer to an act says. */
        LinkActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            link: components["schemas"]["OrderLinkOut"];
        };
        /** @description A link to make; its address is answered once and kept nowhere. */
        LinkInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date */
            expires_on: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `client` - Client
             *     * `visitor` - Visitor
             * @default client
             * @enum {string}
             */
            kind: "client" | "visitor";
            /** @default  */
            note: string;
            /**
             * @description * `nobody` - Nobody
             *     * `initials` - Initials
             *     * `first_name` - First Name
             * @default initials
             * @enum {string}
             */
            people: "nobody" | "initials" | "first_name";
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            shown_photo_ids?: string[];
            shows?: ("counts" | "delivery" | "approvals" | "stages" | "history" | "losses" | "papers")[];
        };
        /** @description The new link with its address, which is shown this once. */
        LinkMadeOut: {
            address: string;
            /** Format: uuid */
            id: string;
            journal_seq: number;
            link: components["schemas"]["OrderLinkOut"];
            /** @description A text to send by oneself, the address in it. */
            message: string;
        };
        /** @description What the holder of a link is told before taking it. */
        LinkOut: {
            /** Format: date-time */
            expires_at: string;
            roles: string[];
            studio: components["schemas"]["MyStudioOut"];
        };
        /** @description A link that is not made: what it would show. */
        LinkPreviewInRequest: {
            /** Format: date */
            expires_on: string;
            /**
             * @description * `client` - Client
             *     * `visitor` - Visitor
             * @default client
             * @enum {string}
             */
            kind: "client" | "visitor";
            /**
             * @description * `nobody` - Nobody
             *     * `initials` - Initials
             *     * `first_name` - First Name
             * @default initials
             * @enum {string}
             */
            people: "nobody" | "initials" | "first_name";
            shown_photo_ids?: string[];
            shows?: ("counts" | "delivery" | "approvals" | "stages" | "history" | "losses" | "papers")[];
        };
        LinkPreviewOut: {
            /** @description The page as its holder would see it. */
            html: string;
            /** @description All that is in it. */
            shown: {
                [key: string]: unknown;
            };
        };
        /** @description Litres that a person says of one maker's ware; the reckoned ones are kept beside them. */
        LitresSaidInRequest: {
            /** Format: double */
            litres: number;
            /** Format: uuid */
            member_id: string;
            /** @default  */
            why: string;
        };
        /** @description What every answer to an act says. */
        LoadActOut: {
            cautions: components["schemas"]["WordOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            load: components["schemas"]["LoadOut"];
        };
        /** @description A load as a row of a list. */
        LoadBriefOut: {
            cone: string;
            /** Format: date-time */
            cutoff_at: string;
            /** Format: date-time */
            expected_end_at: string | null;
            /**
             * Format: double
             * @description Hours that really passed from lighting to the end.
             */
            firing_h: number | null;
            /** Format: uuid */
            id: string;
            /** @description Two people told what cannot both be so. */
            is_in_doubt: boolean;
            is_interrupted: boolean;
            is_unplanned: boolean;
            kiln: components["schemas"]["KilnNamedOut"];
            /**
             * @description * `bisque` - Bisque
             *     * `glaze` - Glaze
             *     * `test` - Test
             * @enum {string}
             */
            kind: "bisque" | "glaze" | "test";
            /** Format: double */
            litres: number;
            makers: components["schemas"]["MakerInLoadOut"][];
            /** @description Its kiln is out of use. */
            needs_kiln: boolean;
            number: string;
            outcome: string;
            pieces: number;
            revision: number;
            /** Format: date-time */
            starts_at: string;
            /**
             * @description * `open` - Open
             *     * `settled` - Settled
             *     * `loading` - Loading
             *     * `firing` - Firing
             *     * `stopped` - Stopped
             *     * `cooling` - Cooling
             *     * `opened` - Opened
             *     * `unloaded` - Unloaded
             *     * `called_off` - Called Off
             * @enum {string}
             */
            state: "open" | "settled" | "loading" | "firing" | "stopped" | "cooling" | "opened" | "unloaded" | "called_off";
            state_words: string;
            things: number;
            times: components["schemas"]["LoadTimesOut"];
            watcher: components["schemas"]["PersonNamedOut"] | null;
        };
        /** @description Some LoadBriefOut rows, and where the next ones are. */
        LoadBriefOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["LoadBriefOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        LoadClashAnswerInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /**
             * @description * `first` - first
             *     * `second` - second
             * @enum {string}
             */
            choice: "first" | "second";
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        LoadClashAnswerOut: {
            clash: components["schemas"]["ClashOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            load: components["schemas"]["LoadOut"];
        };
        /** @description All of them: they are few, and never more than one page. */
        LoadClashListOut: {
            next: string | null;
            results: components["schemas"]["ClashOut"][];
        };
        /**
         * @description What happened to a load. Opening wants a temperature or a reason, unloading an outcome.
         *
         *     `place_id` is where fired ware was put that no result names a place for. `is_catching_up` lets
         *     steps between be missing.
         */
        LoadEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            celsius?: number | string | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default false */
            is_catching_up: boolean;
            /**
             * @description * `settled` - Settled
             *     * `reopened` - Reopened
             *     * `loading` - Loading
             *     * `started` - Started
             *     * `stopped` - Stopped
             *     * `resumed` - Resumed
             *     * `ended` - Ended
             *     * `opened` - Opened
             *     * `unloaded` - Unloaded
             *     * `called_off` - Called Off
             * @enum {string}
             */
            kind: "settled" | "reopened" | "loading" | "started" | "stopped" | "resumed" | "ended" | "opened" | "unloaded" | "called_off";
            /** @default  */
            note: string;
            /**
             * @description * `fired` - fired
             *     * `not_fired` - not_fired
             *     * `unsure` - unsure
             * @default
             * @enum {string}
             */
            outcome: "fired" | "not_fired" | "unsure" | "";
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            /** @default  */
            reason: string;
            results?: components["schemas"]["ResultInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        LoadEventOut: {
            /** Format: double */
            celsius: number | null;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** @description It cannot follow what else was told. */
            is_misfit: boolean;
            is_taken_back: boolean;
            /**
             * @description * `settled` - Settled
             *     * `reopened` - Reopened
             *     * `loading` - Loading
             *     * `started` - Started
             *     * `stopped` - Stopped
             *     * `resumed` - Resumed
             *     * `ended` - Ended
             *     * `opened` - Opened
             *     * `unloaded` - Unloaded
             *     * `called_off` - Called Off
             * @enum {string}
             */
            kind: "settled" | "reopened" | "loading" | "started" | "stopped" | "resumed" | "ended" | "opened" | "unloaded" | "called_off";
            member: components["schemas"]["PersonNamedOut"];
            note: string | null;
            outcome: string;
            reason: string;
            words: string;
            /** Format: date-time */
            written_at: string;
        };
        /** @description Some LoadEventOut rows, and where the next ones are. */
        LoadEventOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["LoadEventOut"][];
        };
        /**
         * @description A load for a slot of a kiln; without a number it gets the next one of its series.
         *
         *     An unplanned one was fired before anybody wrote it down: its acts follow, dated as they were.
         */
        LoadInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cone: string;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            cutoff_at?: string | null;
            /** Format: double */
            expected_h?: number | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default false */
            is_unplanned: boolean;
            /** Format: uuid */
            kiln_id: string;
            /**
             * @description * `bisque` - Bisque
             *     * `glaze` - Glaze
             *     * `test` - Test
             * @enum {string}
             */
            kind: "bisque" | "glaze" | "test";
            /** @default  */
            note: string;
            number?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            programme_id?: string | null;
            reading_every_min?: number;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: date-time */
            starts_at: string;
            /** Format: uuid */
            watcher_id?: string | null;
        };
        LoadNamedOut: {
            /** Format: uuid */
            id: string;
            number: string;
            /** Format: date-time */
            starts_at: string;
        };
        /** @description A load with its ware and its log. */
        LoadOut: {
            cautions: components["schemas"]["WordOut"][];
            checklist: components["schemas"]["WordOut"][];
            clock_change: components["schemas"]["ClockChangeOut"] | null;
            cone: string;
            cones: components["schemas"]["ConeSeenOut"][];
            curve: components["schemas"]["CornerOut"][];
            /** Format: date-time */
            cutoff_at: string;
            events: components["schemas"]["LoadEventOut"][];
            /** Format: date-time */
            expected_end_at: string | null;
            /** Format: double */
            expected_h: number | null;
            /**
             * Format: double
             * @description Hours that really passed from lighting to the end.
             */
            firing_h: number | null;
            /** Format: double */
            gap_h: number;
            /** Format: double */
            hot_h: number;
            /** Format: uuid */
            id: string;
            /** @description Two people told what cannot both be so. */
            is_in_doubt: boolean;
            is_interrupted: boolean;
            is_unplanned: boolean;
            kiln: components["schemas"]["KilnNamedOut"];
            /**
             * @description * `bisque` - Bisque
             *     * `glaze` - Glaze
             *     * `test` - Test
             * @enum {string}
             */
            kind: "bisque" | "glaze" | "test";
            /**
             * Format: double
             * @description The studio opens kilns at or below it.
             */
            limit_c: number;
            /** Format: double */
            litres: number;
            makers: components["schemas"]["MakerInLoadOut"][];
            may: components["schemas"]["MayOut"];
            misfits: string[];
            /** @description Its kiln is out of use. */
            needs_kiln: boolean;
            next_load: components["schemas"]["LoadNamedOut"] | null;
            /** @description Only of one called off of late. */
            next_slot: components["schemas"]["NextSlotOut"] | null;
            nexts: string[];
            number: string;
            opening: components["schemas"]["KilnOpeningOut"] | null;
            outcome: string;
            pieces: number;
            placements: components["schemas"]["PlacementOut"][];
            /** Format: double */
            planned_now_c: number | null;
            programme: components["schemas"]["ProgrammeOut"] | null;
            reading_every_min: number;
            readings: components["schemas"]["KilnReadingOut"][];
            revision: number;
            /** Format: date-time */
            starts_at: string;
            /**
             * @description * `open` - Open
             *     * `settled` - Settled
             *     * `loading` - Loading
             *     * `firing` - Firing
             *     * `stopped` - Stopped
             *     * `cooling` - Cooling
             *     * `opened` - Opened
             *     * `unloaded` - Unloaded
             *     * `called_off` - Called Off
             * @enum {string}
             */
            state: "open" | "settled" | "loading" | "firing" | "stopped" | "cooling" | "opened" | "unloaded" | "called_off";
            state_words: string;
            stopped: components["schemas"]["StoppedOut"] | null;
            things: number;
            times: components["schemas"]["LoadTimesOut"];
            warnings: components["schemas"]["WordOut"][];
            watcher: components["schemas"]["PersonNamedOut"] | null;
            worst_gap: components["schemas"]["WorstGapOut"] | null;
        };
        LoadScreenOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            load: components["schemas"]["LoadOut"];
        };
        LoadTimesOut: {
            /** Format: date-time */
            called_off_at: string | null;
            /** Format: date-time */
            ended_at: string | null;
            /** Format: date-time */
            loaded_at: string | null;
            /** Format: date-time */
            opened_at: string | null;
            /** Format: date-time */
            resumed_at: string | null;
            /** Format: date-time */
            settled_at: string | null;
            /** Format: date-time */
            started_at: string | null;
            /** Format: date-time */
            stopped_at: string | null;
            /** Format: date-time */
            unloaded_at: string | null;
        };
        /** @description The clay part that a set gives. */
        MadePartOut: {
            /** Format: uuid */
            design_id: string;
            design_name: string;
            /** Format: uuid */
            id: string;
            role: string;
        };
        MakerInLoadOut: {
            /** Format: double */
            litres: number;
            person: components["schemas"]["PersonNamedOut"] | null;
            pieces: number;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        MasterEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `ready` - ready
             *     * `lost` - lost
             * @enum {string}
             */
            kind: "ready" | "lost";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description An enlarged model of a design, or of one part of it. */
        MasterInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: uuid */
            design_id: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default false */
            is_ready: boolean;
            label: string;
            /** @default  */
            note: string;
            /** Format: uuid */
            part_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        MasterOut: {
            /** Format: uuid */
            design_id: string;
            /** Format: uuid */
            id: string;
            is_ready: boolean;
            label: string;
            /** Format: uuid */
            part_id: string | null;
        };
        /** @description Some MasterOut rows, and where the next ones are. */
        MasterOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MasterOut"][];
        };
        /** @description What every answer to an act says. */
        MatchActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            match: components["schemas"]["MatchOut"];
            pieces: components["schemas"]["PieceBriefOut"][];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description Two pieces stand together, or not any more. */
        MatchInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `matched` - Matched
             *     * `parted` - Parted
             * @enum {string}
             */
            kind: "matched" | "parted";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            piece_ids: string[];
            seat_gap_mm?: number | string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        MatchOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /**
             * @description * `matched` - matched
             *     * `parted` - parted
             * @enum {string}
             */
            kind: "matched" | "parted";
            marks: string[];
            member: components["schemas"]["PersonNamedOut"];
            piece_ids: string[];
            /** Format: double */
            seat_gap_mm: number | null;
        };
        /** @description Some MatchOut rows, and where the next ones are. */
        MatchOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MatchOut"][];
        };
        MaterialToldOut: {
            caution: string;
            what: string;
        };
        MayOut: {
            add: boolean;
            call_off: boolean;
            change: boolean;
            override: boolean;
            record: boolean;
            reopen: boolean;
            settle: boolean;
        };
        MeasuredOut: {
            bars: number;
            /** Format: double */
            drying_fraction: number | null;
            /** Format: double */
            total_fraction: number | null;
            /** Format: double */
            total_least_fraction: number | null;
            /** Format: double */
            total_most_fraction: number | null;
        };
        MeetingOut: {
            /** Format: date-time */
            closes: string | null;
            /** Format: date-time */
            opens: string | null;
            words: string;
        };
        /** @description What every answer to an act says. */
        MemberChangedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            member: components["schemas"]["MemberOut"];
        };
        /** @description A member as the others see them; the e-mail is for owners and for oneself. */
        MemberOut: {
            readonly email: string | null;
            first_name: string;
            full_name: string;
            readonly has_left: boolean;
            readonly helps: string[];
            /** Format: uuid */
            id?: string;
            initials: string;
            roles?: unknown;
        };
        /** @description Some MemberOut rows, and where the next ones are. */
        MemberOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MemberOut"][];
        };
        MembershipOut: {
            member: components["schemas"]["MyselfOut"];
            studio: components["schemas"]["MyStudioOut"];
        };
        MeOut: {
            /** @description Only on a shared phone. */
            device: components["schemas"]["SharedPhoneOut"] | null;
            memberships: components["schemas"]["MembershipOut"][];
            username: string | null;
        };
        /** @description Water by mass of dry clay, in place of the body's own figures; they fall in this order. */
        MoisturesInRequest: {
            bisque?: number | string;
            demould?: number | string;
            leather_closes?: number | string;
            leather_opens?: number | string;
            pressed?: number | string;
            shrinkage_ends?: number | string;
        };
        /** @description How many more to press so that enough survive in nine cases of ten. */
        MorePressOut: {
            by_role: components["schemas"]["RoleCountOut"][];
            more: number | null;
            words: string;
        };
        /** @description Whose air the forecast used. */
        MouldAirOut: {
            is_assumed: boolean;
            place: components["schemas"]["MouldPlaceOut"] | null;
            words: string;
        };
        MouldNamedOut: {
            generation: number;
            label: string;
            press_since_dry: number | null;
            /** Format: uuid */
            set_id: string;
        };
        /** @description Anybody may say that a part is chipped or missing; the rest is its owner's to say. */
        MouldPartEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `chipped` - chipped
             *     * `out_of_use` - out_of_use
             *     * `missing` - missing
             *     * `mended` - mended
             *     * `found` - found
             * @enum {string}
             */
            kind: "chipped" | "out_of_use" | "missing" | "mended" | "found";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description How a mould part is now, and the pressings since somebody last found it good. */
        MouldPartEventOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            part: components["schemas"]["MouldPartOut"];
            pressings_to_check: components["schemas"]["PressingOut"][];
        };
        MouldPartOut: {
            /** Format: uuid */
            id?: string;
            name: string;
            /** Format: int64 */
            presses?: number;
            /** Format: int64 */
            presses_before?: number;
            presses_before_by: components["schemas"]["MouldUserOut"] | null;
            /**
             * @description * `whole` - Whole
             *     * `chipped` - Chipped
             *     * `out_of_use` - Out Of Use
             *     * `missing` - Missing
             * @enum {string}
             */
            state?: "whole" | "chipped" | "out_of_use" | "missing";
            state_reason?: string;
        };
        MouldPlaceOut: {
            /** Format: uuid */
            id: string;
            name: string;
        };
        /** @description A label on a shelf that gives one clay part. */
        MouldSetInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            inspect_at_presses?: number | null;
            is_hump?: boolean;
            label: string;
            /** Format: uuid */
            makes_id: string;
            /** @default  */
            note: string;
            /**
             * Format: uuid
             * @description Null: the studio's own. Left out when making one: the writer's.
             */
            owner_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            plaster_mm?: number | string;
            /**
             * Format: double
             * @description Hours in which the dry mould lets go of its first press, by your own record.
             */
            release_h?: number | null;
            rest_after_presses?: number;
            retire_at_presses?: number | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description A set with its casting in use, as it is now. */
        MouldSetOut: {
            casting: components["schemas"]["CastingOut"] | null;
            dryness: components["schemas"]["DrynessOut"];
            /** Format: uuid */
            id: string;
            inspect_at_presses: number | null;
            is_hump: boolean;
            label: string;
            makes: components["schemas"]["MadePartOut"];
            next_booking: components["schemas"]["BookingOut"] | null;
            owner: components["schemas"]["MouldUserOut"] | null;
            parts: components["schemas"]["MouldPartOut"][];
            place: components["schemas"]["MouldPlaceOut"] | null;
            /** Format: double */
            plaster_mm: number;
            presses: number;
            /** Format: double */
            release_h: number | null;
            rest_after_presses: number;
            retire_at_presses: number | null;
            revision: number;
            wear: components["schemas"]["WearOut"];
        };
        /** @description Some MouldSetOut rows, and where the next ones are. */
        MouldSetOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MouldSetOut"][];
        };
        /** @description The plaster it is pressed into; without `until_h`, until the middle guess lets go. */
        MouldSumInRequest: {
            free_water_fraction: number | string;
            /** Format: double */
            until_h?: number | null;
        };
        /** @description Somebody who owns, booked or vouched. */
        MouldUserOut: {
            first_name: string;
            /** Format: uuid */
            id: string;
            initials: string;
        };
        /** @description The whole casting without clay; `is_dry` when it is known to be dry. */
        MouldWeighingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default false */
            is_dry: boolean;
            mass_g: number | string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description A weighing, and what it says of the casting. */
        MouldWeighingOut: {
            dryness: components["schemas"]["DrynessOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            weighing: components["schemas"]["MouldWeighingRowOut"];
        };
        MouldWeighingRowOut: {
            /** Format: uuid */
            casting_id: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            is_dry: boolean;
            /** Format: double */
            mass_g: number;
        };
        /** @description Some MouldWeighingRowOut rows, and where the next ones are. */
        MouldWeighingRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MouldWeighingRowOut"][];
        };
        /** @description Where it was put; said again of the place where it stands, what it stands on there. */
        MoveInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description A board, a plaster bat or slats open below; left out, as is usual there.
             *
             *     * `board` - Board
             *     * `bat` - Bat
             *     * `slats` - Slats
             * @default
             * @enum {string}
             */
            stands_on: "board" | "bat" | "slats" | "";
        };
        MoveRowOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            place_id: string;
            stands_on: string;
        };
        /** @description Some MoveRowOut rows, and where the next ones are. */
        MoveRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["MoveRowOut"][];
        };
        /** @description The member as they see themselves. */
        MyselfOut: {
            email: string;
            first_name: string;
            full_name: string;
            readonly grants: string[];
            readonly has_pin: boolean;
            /** Format: uuid */
            id: string;
            initials: string;
            left_handed: boolean;
            quiet_from: string | null;
            quiet_until: string | null;
            roles: string[];
            text: number;
            /**
             * @description * `sun` - sun
             *     * `shed` - shed
             *     * `phone` - phone
             * @enum {string}
             */
            theme: "sun" | "shed" | "phone";
            units: components["schemas"]["UnitsOut"];
            wants_email: boolean;
        };
        MyStudioOut: {
            /** Format: uuid */
            id: string;
            name: string;
            slug: string;
            zone: string;
        };
        /** @description What the cone needs at the rate of the last leg, by which chart. [°C] */
        NeededOut: {
            /** Format: double */
            celsius: number;
            chart: string;
            /** Format: double */
            high_c: number;
            /** Format: double */
            low_c: number;
            /** Format: double */
            rate_c_per_h: number;
        };
        /** @description Who takes it; a name and a password only from somebody who is not signed in. */
        NewcomerInRequest: {
            first_name: string;
            full_name: string;
            /** @description One to four letters, cut beside marks. */
            initials: string;
            password?: string;
            /** @description Letters, figures and .@+-_ */
            username?: string;
        };
        /** @description Where the ware of a load that was called off could go. */
        NextSlotOut: {
            /** Format: date */
            day: string | null;
            kiln: components["schemas"]["KilnNamedOut"] | null;
            load: components["schemas"]["LoadNamedOut"] | null;
            words: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        NumberBlockInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** @description The letters before the number, as in T29. */
            series: string;
        };
        /** @description What every answer to an act says. */
        NumberBlockOut: {
            first: number;
            /** Format: uuid */
            id: string;
            journal_seq: number;
            last: number;
            series: string;
        };
        OhmsOut: {
            /** Format: date-time */
            measured_at: string;
            /** Format: double */
            over_new_fraction: number;
        };
        /** @description What every answer to an act says. */
        OpeningChangedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            opening: components["schemas"]["OpeningOut"];
        };
        OpeningOut: {
            closed_days: components["schemas"]["ClosedDayFields"][];
            revision: number;
            weekly: components["schemas"]["HoursFields"][];
            /** @description The hours are on this zone's clocks. */
            zone: string;
        };
        /** @description Sets, but what ends in `pieces`. Finished sets are among those alive, delivered ones too. */
        OrderCountsOut: {
            alive: number;
            damaged_pieces: number;
            delivered: number;
            finished: number;
            in_doubt: number;
            lost_pieces: number;
            /** @description In no set: of another design. */
            outside_pieces: number;
            pieces: number;
            planned: number;
            wanted: number;
        };
        /** @description What every answer to an act says. */
        OrderLineActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            line: components["schemas"]["OrderLineOut"];
        };
        /** @description So many sets of one thing; without a recipe any piece is a set. */
        OrderLineFieldsRequest: {
            /** Format: uuid */
            id?: string | null;
            recipe?: components["schemas"]["SetRoleInRequest"][];
            wanted_sets: number;
            what: string;
        };
        /** @description A line to add. */
        OrderLineInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** Format: uuid */
            line_id?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            recipe?: components["schemas"]["SetRoleInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            wanted_sets: number;
            what: string;
        };
        OrderLineOut: {
            counts: components["schemas"]["OrderCountsOut"];
            /** Format: uuid */
            id: string;
            order: number;
            pieces: components["schemas"]["OrderPieceOut"][];
            recipe: components["schemas"]["SetRoleOut"][];
            sentence: string;
            stages: components["schemas"]["StageCountOut"][];
            wanted_sets: number;
            what: string;
        };
        OrderLinkListOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            /** @description The photos of the order that may be chosen. */
            photos: components["schemas"]["SharedPhotoOut"][];
            results: components["schemas"]["OrderLinkOut"][];
        };
        OrderLinkOut: {
            /** Format: date-time */
            expires_at: string;
            /** Format: uuid */
            id: string;
            /**
             * @description * `client` - Client
             *     * `visitor` - Visitor
             * @enum {string}
             */
            kind: "client" | "visitor";
            /** Format: date-time */
            made_at: string;
            made_by: components["schemas"]["PersonNamedOut"];
            opened_at: string[];
            /** @description Quarters of an hour in which it was opened. */
            opened_times: number;
            /**
             * @description * `nobody` - Nobody
             *     * `initials` - Initials
             *     * `first_name` - First Name
             * @enum {string}
             */
            people: "nobody" | "initials" | "first_name";
            /** Format: date-time */
            revoked_at: string | null;
            shown_photo_ids: string[];
            shows: string[];
            /**
             * @description * `live` - live
             *     * `expired` - expired
             *     * `revoked` - revoked
             * @enum {string}
             */
            state: "live" | "expired" | "revoked";
        };
        /** @description What this member may do to the order. */
        OrderMayOut: {
            change: boolean;
            lift_display: boolean;
            plan: boolean;
        };
        OrderNamedOut: {
            /** Format: uuid */
            id: string;
            number: string;
        };
        OrderPieceOut: {
            /** Format: uuid */
            clash_id: string | null;
            cover: string;
            /** Format: uuid */
            design_id: string;
            design_name: string;
            grade: string;
            /** Format: uuid */
            id: string;
            is_damaged: boolean;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mark: string;
            mine: boolean;
            missing_roles: string[];
            noun: string;
            partners: components["schemas"]["PartnerOut"][];
            place: components["schemas"]["PlaceNamedOut"] | null;
            role: string | null;
            /** @description Which set it is counted in. */
            set: number | null;
            /** Format: date-time */
            since_at: string;
            stage: string;
            state: string;
            state_words: string;
            /** Format: date-time */
            touched_at: string;
            /**
             * @description * `food` - food
             *     * `display` - display
             * @enum {string}
             */
            use: "food" | "display";
            /** @description What it stands with, as in “lid for J06”. */
            words: string;
        };
        OrderToldLineOut: {
            marks: string[];
            piece_ids: string[];
            words: string;
        };
        /** @description One act about an order or its pieces; both times where it was told late. */
        OrderToldOut: {
            came_from_other_order: boolean;
            /** Format: uuid */
            corrects: string | null;
            device: string;
            /** Format: date-time */
            happened_at: string;
            /** @description Said about other orders too; the piece's own story has it. */
            has_hidden_note: boolean;
            /** @description As with a note. */
            has_hidden_photos: boolean;
            /** Format: uuid */
            id: string;
            is_late: boolean;
            is_taken_back: boolean;
            /**
             * @description * `loss` - loss
             *     * `firing` - firing
             *     * `promise` - promise
             *     * `client` - client
             *     * `making` - making
             * @enum {string}
             */
            kind: "loss" | "firing" | "promise" | "client" | "making";
            lines: components["schemas"]["OrderToldLineOut"][];
            member: components["schemas"]["PersonNamedOut"];
            note: string | null;
            photo_ids: string[];
            seq: number;
            /** Format: date-time */
            taken_back_at: string | null;
            taken_back_by: components["schemas"]["PersonNamedOut"] | null;
            verb: string;
            /** @description Of the order itself; empty where it is of pieces. */
            words: string;
            /** Format: date-time */
            written_at: string;
        };
        /** @description Some OrderToldOut rows, and where the next ones are. */
        OrderToldOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["OrderToldOut"][];
        };
        OutlookLineOut: {
            /**
             * Format: double
             * @description Only from 20 own outcomes on; before, there are words.
             */
            chance: number | null;
            chance_words: string;
            is_all_there: boolean;
            latest_press: components["schemas"]["LatestPressOut"][];
            /** Format: date */
            likely_from: string | null;
            /** Format: date */
            likely_until: string | null;
            /** Format: uuid */
            line_id: string;
            press: components["schemas"]["MorePressOut"];
            risks: components["schemas"]["RiskOut"][];
            /** @description Sets wanted and not finished yet. */
            still_needed: number;
            wanted_sets: number;
            what: string;
        };
        OutlookOut: {
            /** Format: date-time */
            at: string;
            /**
             * @description * `guess` - guess
             *     * `outcomes` - outcomes
             * @enum {string}
             */
            basis: "guess" | "outcomes";
            basis_words: string;
            cautions: components["schemas"]["RiskOut"][];
            /** Format: double */
            chance: number | null;
            /** Format: uuid */
            commission_id: string;
            first_time: components["schemas"]["FirstTimeOut"];
            is_at_risk: boolean;
            journal_seq: number;
            /** Format: date */
            likely_from: string | null;
            /**
             * Format: date
             * @description The day by which it is as likely there as not.
             */
            likely_middle: string | null;
            /** Format: date */
            likely_until: string | null;
            lines: components["schemas"]["OutlookLineOut"][];
            /** @description Own pieces whose fate is known. */
            outcomes: number;
            parts: components["schemas"]["PartLostOut"][];
            /** Format: date */
            promised_date: string | null;
            sources: string[];
            steps: components["schemas"]["StepFigureOut"][];
            words: string;
        };
        /** @description What the papers would say now; `missing` keeps the ware from being declared for food. */
        PapersFactsOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            kept: components["schemas"]["SignedPapersOut"][];
            materials: components["schemas"]["MaterialToldOut"][];
            may: components["schemas"]["PapersMayOut"];
            missing: string[];
            number: string;
            pieces: components["schemas"]["PieceFoodOut"][];
            /**
             * @description * `display` - display
             *     * `declared` - declared
             *     * `not_declared` - not_declared
             * @enum {string}
             */
            state: "display" | "declared" | "not_declared";
            told_since: number;
        };
        /** @description The owner signs; `declares`: by the reports the ware may be declared for food. */
        PapersInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** @default false */
            declares: boolean;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description How makers are named, as was agreed with them.
             *
             *     * `nobody` - Nobody
             *     * `initials` - Initials
             *     * `first_name` - First Name
             * @default initials
             * @enum {string}
             */
            people: "nobody" | "initials" | "first_name";
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        PapersMayOut: {
            print: boolean;
            sign: boolean;
        };
        /** @description The answer to an act about one piece: the piece as it is now, and what to mind. */
        PartActOut: {
            asks: components["schemas"]["AskedOut"][];
            cautions: components["schemas"]["WordOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            part: components["schemas"]["PartWholeOut"];
            piece: components["schemas"]["PieceBriefOut"];
            warnings: components["schemas"]["WordOut"][];
        };
        PartBlockOut: {
            /** Format: uuid */
            id: string;
            label: string;
        };
        /** @description What happened to a part; `replacement_id` is the part that stands for a replaced one. */
        PartEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** @default  */
            cause: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `demoulded` - demoulded
             *     * `not_yet` - not_yet
             *     * `stuck` - stuck
             *     * `joined` - joined
             *     * `cracked` - cracked
             *     * `scrapped` - scrapped
             *     * `replaced` - replaced
             * @enum {string}
             */
            kind: "demoulded" | "not_yet" | "stuck" | "joined" | "cracked" | "scrapped" | "replaced";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            replacement_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description hooked_edge, wet_mould, undercut, or other words.
             * @default
             */
            stuck_how: string;
        };
        PartEventRowOut: {
            cause: string;
            /** Format: date-time */
            happened_at: string;
            how: string;
            /** Format: uuid */
            id: string;
            kind: string;
        };
        /** @description Some PartEventRowOut rows, and where the next ones are. */
        PartEventRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PartEventRowOut"][];
        };
        /** @description Parts of one role that were lost before their piece was, of those joined or lost. */
        PartLostOut: {
            lost: number;
            of: number;
            role: string;
            words: string;
        };
        /** @description A part made without a mould; its id is its own. */
        PartMadeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /** Format: uuid */
            part_id: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            role: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        PartMouldOut: {
            generation: number;
            label: string;
            /** Format: uuid */
            set_id: string;
        };
        PartNamedOut: {
            /** Format: uuid */
            id: string;
            role: string;
            state: string;
        };
        PartnerNamedOut: {
            design_name: string;
            /** Format: uuid */
            id: string;
            mark: string;
            noun: string;
            /** Format: double */
            seat_gap_mm: number | null;
            stage: string;
            state: string;
            state_words: string;
        };
        /** @description A piece that another one stands with. */
        PartnerOut: {
            /** Format: uuid */
            id: string;
            mark: string;
            /** Format: double */
            seat_gap_mm: number | null;
        };
        PartWholeOut: {
            /** @description its own, until the piece is covered as a whole; empty: as the piece */
            cover: string;
            /** Format: date-time */
            ended_at: string | null;
            /** Format: uuid */
            id: string;
            /** Format: date-time */
            joined_at: string | null;
            /** Format: date-time */
            look_again_at: string | null;
            mould: components["schemas"]["PartMouldOut"] | null;
            number: number;
            /** Format: date-time */
            out_at: string | null;
            /** Format: date-time */
            pressed_at: string | null;
            /** Format: uuid */
            replaces: string | null;
            role: string;
            slab_block: components["schemas"]["PartBlockOut"] | null;
            state: string;
        };
        /** @description Some PartWholeOut rows, and where the next ones are. */
        PartWholeOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PartWholeOut"][];
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedBarChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            bisque_mm?: number | string | null;
            /** Format: uuid */
            corrects?: string | null;
            dry_mm?: number | string | null;
            fired_mm?: number | string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            wet_mm?: number | string;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedBatchChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string;
            caution?: string;
            clay_g?: number | string | null;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            label?: string;
            /** Format: date */
            mixed_on?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            stain_g?: number | string | null;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedBodyChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            caution?: string;
            code?: string;
            /** Format: uuid */
            corrects?: string | null;
            dry_shrinkage_fraction?: number | string | null;
            /**
             * @description Whose drying figures to start from.
             *
             *     * `red_earthenware` - red_earthenware
             *     * `white_earthenware` - white_earthenware
             *     * `grogged_stoneware` - grogged_stoneware
             *     * `smooth_stoneware` - smooth_stoneware
             *     * `porcelain` - porcelain
             *     * `terracotta_crank` - terracotta_crank
             * @enum {string}
             */
            drying_body?: "red_earthenware" | "white_earthenware" | "grogged_stoneware" | "smooth_stoneware" | "porcelain" | "terracotta_crank";
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            name?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            top_cone?: string;
            total_shrinkage_fraction?: number | string | null;
        };
        /** @description What is to change; what is left out stays. `display` is lifted by the owner only. */
        PatchedCommissionChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            client_contact?: string;
            client_name?: string;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** Format: uuid */
            maker_id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @enum {string}
             */
            use?: "food" | "display";
            what?: string;
        };
        /** @description What is to change of a design; parts not named stay as they are. */
        PatchedDesignChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string | null;
            capacity_ml?: number | string | null;
            /** @description Walls over 80 mm that are meant: #/parts/0/thickest_mm. */
            confirmed?: string[];
            /**
             * @description table, cooking, storage; a lid is tested with the vessel it closes.
             *
             *     * `table` - Table
             *     * `cooking` - Cooking
             *     * `storage` - Storage
             *     * `lid` - Lid
             * @enum {string}
             */
            contact?: "table" | "cooking" | "storage" | "lid";
            /** Format: uuid */
            corrects?: string | null;
            footprint_x_mm?: number | string | null;
            footprint_y_mm?: number | string | null;
            /** Format: date-time */
            happened_at?: string;
            height_mm?: number | string | null;
            /** Format: uuid */
            id?: string;
            inside_depth_mm?: number | string | null;
            is_round?: boolean;
            name?: string;
            /** @default  */
            note: string;
            noun?: string;
            parts?: components["schemas"]["DesignPartInRequest"][];
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            uses_moulds?: boolean;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedDeviceChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /**
             * @description Takes off the lock of too many wrong PINs.
             *
             *     * `False` - False
             * @enum {boolean}
             */
            is_locked?: false;
            name?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedGlazeBatchChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            caution?: string;
            cone?: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: double
             * @description Of the slop as it was dipped.
             */
            density_g_per_l?: number | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            label?: string;
            /** Format: uuid */
            mixed_by_id?: string | null;
            /** Format: date */
            mixed_on?: string | null;
            name?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What is to change of a kiln; shelves and posts, where given, stand for all it had. */
        PatchedKilnChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /**
             * @description * `rect` - Rect
             *     * `round` - Round
             * @enum {string}
             */
            chamber?: "rect" | "round";
            /**
             * Format: double
             * @description How fast it cooled before: share of its heat above the air lost in an hour.
             */
            cooling_k_per_h?: number | null;
            /** Format: uuid */
            corrects?: string | null;
            depth_mm?: number | string | null;
            diameter_mm?: number | string | null;
            /** Format: date */
            elements_changed_on?: string | null;
            firings_before?: number;
            /** Format: date-time */
            happened_at?: string;
            height_mm?: number | string;
            /** Format: double */
            hot_hours_before?: number;
            /** Format: uuid */
            id?: string;
            /**
             * @description * `front` - Front
             *     * `top` - Top
             * @enum {string}
             */
            kind?: "front" | "top";
            name?: string;
            /** @default  */
            note: string;
            number?: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            posts?: components["schemas"]["PostInRequest"][];
            remarks?: string;
            sensor_firings_before?: number;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            shelves?: components["schemas"]["ShelfInRequest"][];
            top_c?: number | string;
            width_mm?: number | string | null;
        };
        /** @description What is to change of a load; those with ware in it are told. */
        PatchedLoadChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cone?: string;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            cutoff_at?: string;
            /** Format: double */
            expected_h?: number | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** Format: uuid */
            kiln_id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            programme_id?: string | null;
            reading_every_min?: number;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: date-time */
            starts_at?: string;
            /** Format: uuid */
            watcher_id?: string | null;
        };
        /** @description What is to change about me; what is left out stays. */
        PatchedMeInRequest: {
            email?: string;
            left_handed?: boolean;
            /** @description 4 to 8 figures for kiln work on a shared phone; empty takes it away. */
            pin?: string;
            quiet_from?: string | null;
            quiet_until?: string | null;
            /** @description Where; everywhere when left out. */
            studio?: string;
            /**
             * @description * `100` - 100
             *     * `125` - 125
             *     * `150` - 150
             *     * `200` - 200
             * @enum {integer}
             */
            text?: 100 | 125 | 150 | 200;
            /**
             * @description * `sun` - sun
             *     * `shed` - shed
             *     * `phone` - phone
             * @enum {string}
             */
            theme?: "sun" | "shed" | "phone";
            units?: components["schemas"]["UnitsInRequest"];
            wants_email?: boolean;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedMemberChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** @description Makers by id. */
            helps?: string[];
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            roles?: ("owner" | "maker" | "helper" | "technician")[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What is to change of a set; what is left out stays. */
        PatchedMouldSetChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            inspect_at_presses?: number | null;
            is_hump?: boolean;
            label?: string;
            /** @default  */
            note: string;
            /**
             * Format: uuid
             * @description Null: the studio's own. Left out when making one: the writer's.
             */
            owner_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            plaster_mm?: number | string;
            /**
             * Format: double
             * @description Hours in which the dry mould lets go of its first press, by your own record.
             */
            release_h?: number | null;
            rest_after_presses?: number;
            retire_at_presses?: number | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description The whole week, or all closed days, in the place of those before; left out, they stay. */
        PatchedOpeningInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            closed_days?: components["schemas"]["ClosedDayFieldsRequest"][];
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            weekly?: components["schemas"]["HoursFieldsRequest"][];
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedOrderLineChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            wanted_sets?: number;
            what?: string;
        };
        /** @description What a piece is meant for. */
        PatchedPieceChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @enum {string}
             */
            use?: "food" | "display";
        };
        /** @description What is to change; what is left out stays. */
        PatchedPlaceChangeInRequest: {
            /** Format: uuid */
            air_from_id?: string | null;
            /** Format: double */
            air_m_s?: number | null;
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /**
             * @description * `room` - Room
             *     * `rack` - Rack
             *     * `shelf` - Shelf
             *     * `cupboard` - Cupboard
             *     * `bench` - Bench
             *     * `kiln` - Kiln
             *     * `crate` - Crate
             *     * `bat` - Bat
             * @enum {string}
             */
            kind?: "room" | "rack" | "shelf" | "cupboard" | "bench" | "kiln" | "crate" | "bat";
            name?: string;
            /** @default  */
            note: string;
            order?: number;
            /** Format: uuid */
            parent_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description Where it stands. */
        PatchedPlacementChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            level?: number | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: double */
            rotation_deg?: number;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            x_mm?: number | string | null;
            y_mm?: number | string | null;
        };
        /** @description What is to change of a programme; segments, where given, stand for all it had. */
        PatchedProgrammeChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cone?: string;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            /**
             * @description * `bisque` - Bisque
             *     * `glaze` - Glaze
             *     * `test` - Test
             * @enum {string}
             */
            kind?: "bisque" | "glaze" | "test";
            name?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            segments?: components["schemas"]["SegmentInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            top_c?: number | string;
        };
        /** @description What is to change; what is left out stays. */
        PatchedSettingsInRequest: {
            assumed_air_c?: number | string;
            assumed_humidity_fraction?: number | string;
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            bisque_fee_minor_per_l?: number | null;
            bisque_may_touch?: boolean;
            /** Format: uuid */
            corrects?: string | null;
            /** @description ISO 4217, as in GBP. */
            currency?: string;
            /**
             * @description Which size of a piece the tariff names.
             *
             *     * `wet` - Wet
             *     * `dry` - Dry
             *     * `bisque` - Bisque
             *     * `fired` - Fired
             * @enum {string}
             */
            fee_measured?: "wet" | "dry" | "bisque" | "fired";
            /** @description How long found ware is kept. */
            found_notice_days?: number;
            glaze_fee_minor_per_l?: number | null;
            glaze_gap_mm?: number | string;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            mould_dry_below_fraction?: number | string;
            mould_usable_below_fraction?: number | string;
            /** @default  */
            note: string;
            open_kiln_below_c?: number | string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            quiet_from?: string;
            quiet_until?: string;
            refire_headroom_mm?: number | string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            wall_limit_mm?: number | string;
        };
        /** @description The envelope of a PATCH: the id and the time may be left to the server. */
        PatchedSlabBlockChangeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            batch_ids?: string[];
            body_ids?: string[];
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            /** Format: uuid */
            id?: string;
            label?: string;
            /** Format: date */
            laid_on?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: date-time */
            used_up_at?: string | null;
        };
        PersonNamedOut: {
            first_name: string;
            /** Format: uuid */
            id: string;
            initials: string;
        };
        /** @description What every answer to an act says. */
        PhotoActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            photo: components["schemas"]["PhotoOut"];
        };
        /** @description Photos of a thing, with nothing else to say of it. */
        PhotographedInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        PhotographedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** @description All photos of the thing, newest first. */
            photo_ids: string[];
        };
        /** @description A photo as it was taken. What it shows is said by the acts that name it. */
        PhotoInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * Format: binary
             * @description JPEG, PNG or WebP; at most 12 MB and 50 million pixels.
             */
            photo: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description A photo; its pictures are at `image/` and `thumbnail/` below its address. */
        PhotoOut: {
            bytes: number;
            /**
             * Format: date-time
             * @description When it was taken, as its act says.
             */
            happened_at: string;
            /** @description Of the picture as kept. [px] */
            height: number;
            /** Format: uuid */
            id: string;
            sha256: string;
            taken_by: string;
            /** @description Of the picture as kept. [px] */
            width: number;
        };
        /** @description Some PhotoOut rows, and where the next ones are. */
        PhotoOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PhotoOut"][];
        };
        /** @description The answer to an act about one piece: the piece as it is now, and what to mind. */
        PieceActOut: {
            cautions: components["schemas"]["WordOut"][];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            piece: components["schemas"]["PieceBriefOut"];
            warnings: components["schemas"]["WordOut"][];
        };
        PieceBriefOut: {
            /** Format: uuid */
            clash_id: string | null;
            cover: string;
            /** Format: uuid */
            design_id: string;
            design_name: string;
            /** Format: uuid */
            id: string;
            is_damaged: boolean;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mark: string;
            mine: boolean;
            missing_roles: string[];
            noun: string;
            place: components["schemas"]["PlaceNamedOut"] | null;
            /** Format: date-time */
            since_at: string;
            stage: string;
            state: string;
            state_words: string;
            /** Format: date-time */
            touched_at: string;
        };
        /** @description What every answer to an act says. */
        PieceChangedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            piece: components["schemas"]["PieceWholeOut"];
        };
        /** @description A piece as something to eat from. */
        PieceFoodOut: {
            coverage: components["schemas"]["CoverageOut"];
            design: string;
            /** Format: uuid */
            design_id: string;
            fired: components["schemas"]["FiredOut"] | null;
            glaze_batches: components["schemas"]["GlazeNamedOut"][];
            limits: components["schemas"]["LimitsOut"] | null;
            mark: string;
            /** Format: uuid */
            piece_id: string;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @enum {string}
             */
            use: "food" | "display";
        };
        /** @description Where something stands: level 1 is the lowest shelf, x and y from its middle. */
        PieceForLoadInRequest: {
            /**
             * Format: uuid
             * @description Of the placement.
             */
            id?: string;
            level?: number | null;
            /** Format: uuid */
            piece_id: string;
            /** Format: double */
            rotation_deg?: number;
            x_mm?: number | string | null;
            y_mm?: number | string | null;
        };
        PieceLifeOut: {
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            line_id: string;
            mark: string;
            spans: components["schemas"]["StayOut"][];
        };
        /** @description Some pieces, and how far the journal had come when they were read. */
        PieceListOut: {
            /** Format: date-time */
            at: string;
            journal_seq: number;
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PieceBriefOut"][];
        };
        PieceNamedOut: {
            design_name: string;
            /** Format: uuid */
            id: string;
            mark: string;
            noun: string;
            stage: string;
            state: string;
            state_words: string;
        };
        /** @description One piece with everything a screen of it shows. */
        PieceOut: {
            /** Format: date-time */
            at: string;
            backs: components["schemas"]["SpotOut"][];
            /** @description What to mind at the next step. */
            cautions: components["schemas"]["WordOut"][];
            firings: components["schemas"]["FiringCountsOut"];
            history_count: number;
            journal_seq: number;
            nexts: components["schemas"]["SpotOut"][];
            order: components["schemas"]["PromisedToOut"] | null;
            /** @description What it was matched with and stands with. */
            partners: components["schemas"]["PartnerNamedOut"][];
            parts: components["schemas"]["PartWholeOut"][];
            /** @description Of the piece, newest first. */
            photo_ids: string[];
            piece: components["schemas"]["PieceWholeOut"];
            /** @description Where its clay would go if it were scrapped now. */
            reclaim: string;
            story: components["schemas"]["TellingOut"][];
            visits: components["schemas"]["VisitOut"][];
            waits_for: string | null;
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        PieceWeighingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            mass_g: number | string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        PieceWeighingRowOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** Format: double */
            mass_g: number;
        };
        /** @description Some PieceWeighingRowOut rows, and where the next ones are. */
        PieceWeighingRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PieceWeighingRowOut"][];
        };
        PieceWholeOut: {
            /** Format: date-time */
            begun_at: string;
            body: components["schemas"]["BodyNamedOut"] | null;
            /** Format: uuid */
            clash_id: string | null;
            cover: string;
            /** Format: date-time */
            cover_since_at: string | null;
            /** Format: uuid */
            design_id: string;
            design_name: string;
            grade: string;
            has_interrupted_bisque: boolean;
            /** Format: uuid */
            id: string;
            is_damaged: boolean;
            /** Format: date-time */
            look_again_at: string | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mark: string;
            mine: boolean;
            missing_roles: string[];
            noun: string;
            place: components["schemas"]["PlaceNamedOut"] | null;
            /** Format: date-time */
            since_at: string;
            stage: string;
            /**
             * @description While it is wet, and somebody said so.
             *
             *     * `board` - board
             *     * `bat` - bat
             *     * `slats` - slats
             *     * `` -
             * @enum {string}
             */
            stands_on: "board" | "bat" | "slats" | "";
            state: string;
            state_words: string;
            /** Format: date-time */
            touched_at: string;
            /**
             * @description * `food` - food
             *     * `display` - display
             * @enum {string}
             */
            use: "food" | "display";
        };
        /** @description What every answer to an act says. */
        PlacedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            load: components["schemas"]["LoadOut"];
            placement_ids: string[];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description A new place; its id is the act's. */
        PlaceInRequest: {
            /** Format: uuid */
            air_from_id?: string | null;
            /** Format: double */
            air_m_s?: number | null;
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `room` - Room
             *     * `rack` - Rack
             *     * `shelf` - Shelf
             *     * `cupboard` - Cupboard
             *     * `bench` - Bench
             *     * `kiln` - Kiln
             *     * `crate` - Crate
             *     * `bat` - Bat
             * @enum {string}
             */
            kind: "room" | "rack" | "shelf" | "cupboard" | "bench" | "kiln" | "crate" | "bat";
            name: string;
            /** @default  */
            note: string;
            /** @default 0 */
            order: number;
            /** Format: uuid */
            parent_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description A piece in a load, or so many of something else. */
        PlacementOut: {
            asked_by: components["schemas"]["PersonNamedOut"];
            came_from: components["schemas"]["CameFromOut"] | null;
            count: number;
            /** Format: uuid */
            id: string;
            /** @description Two stories are told of it. */
            is_held: boolean;
            level: number | null;
            /** Format: double */
            litres: number | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mine: boolean;
            override_reason: string;
            overrides: string[];
            piece: components["schemas"]["PieceNamedOut"] | null;
            /** Format: date-time */
            placed_at: string;
            result: string;
            /** Format: double */
            rotation_deg: number;
            size: components["schemas"]["SizeOut"] | null;
            warnings: components["schemas"]["WordOut"][];
            what: string;
            /** Format: double */
            x_mm: number | null;
            /** Format: double */
            y_mm: number | null;
        };
        /**
         * @description Ware for a load: all of it, or none. `except_ids` are pieces ticked off.
         *
         *     `override_reason` is a technician's, for ware without evidence of dryness or beyond what fits.
         */
        PlacementsInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            except_ids?: string[];
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /** @default  */
            override_reason: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            pieces?: components["schemas"]["PieceForLoadInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            things?: components["schemas"]["ThingForLoadInRequest"][];
        };
        PlaceNamedOut: {
            /** Format: uuid */
            id: string;
            name: string;
        };
        PlaceOut: {
            /** Format: uuid */
            readonly air_from_id: string | null;
            /** Format: double */
            air_m_s?: number | null;
            /** Format: uuid */
            id?: string;
            /**
             * @description * `room` - Room
             *     * `rack` - Rack
             *     * `shelf` - Shelf
             *     * `cupboard` - Cupboard
             *     * `bench` - Bench
             *     * `kiln` - Kiln
             *     * `crate` - Crate
             *     * `bat` - Bat
             * @enum {string}
             */
            kind: "room" | "rack" | "shelf" | "cupboard" | "bench" | "kiln" | "crate" | "bat";
            name: string;
            /** Format: int64 */
            order?: number;
            /** Format: uuid */
            readonly parent_id: string | null;
        };
        /** @description Some PlaceOut rows, and where the next ones are. */
        PlaceOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PlaceOut"][];
        };
        /** @description Pieces of one design, named one by one in `pieces`, or just `count` of them. */
        PlanInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string | null;
            /** Format: uuid */
            corrects?: string | null;
            /** @default 1 */
            count: number;
            /** Format: uuid */
            design_id: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * Format: uuid
             * @description The line of the order they are for; it also says the use, left out here.
             */
            line_id?: string | null;
            /** Format: uuid */
            maker_id?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            pieces?: components["schemas"]["PlannedPieceInRequest"][];
            /** Format: uuid */
            place_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @enum {string}
             */
            use?: "food" | "display";
        };
        /** @description What every answer to an act says. */
        PlannedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            pieces: components["schemas"]["PieceBriefOut"][];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description A piece that is meant; without a mark it gets the next number of its series. */
        PlannedPieceInRequest: {
            /** Format: uuid */
            id: string;
            mark?: string | null;
        };
        /** @description Some alike posts; those that stand inside the edge of the shelf cost a place. */
        PostInRequest: {
            count: number;
            footprint_mm: number | string;
            height_mm: number | string;
            /** @default false */
            stands_inside: boolean;
        };
        PostOut: {
            /** Format: int64 */
            count: number;
            /** Format: double */
            footprint_mm: number;
            /** Format: double */
            height_mm: number;
            /** Format: uuid */
            id?: string;
            stands_inside?: boolean;
        };
        PostSpotOut: {
            /** Format: double */
            x_mm: number;
            /** Format: double */
            y_mm: number;
        };
        /** @description A new casting, and the pressings of the one before that may hold crumbs. */
        PouredOut: {
            casting: components["schemas"]["CastingOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            laid_aside: components["schemas"]["CastingOut"] | null;
            parts: components["schemas"]["MouldPartOut"][];
            pressings_to_check: components["schemas"]["PressingOut"][];
            warnings: components["schemas"]["CautionOut"][];
        };
        PressBookingOut: {
            /** Format: date-time */
            from_at: string;
            member: components["schemas"]["PersonNamedOut"];
            /** Format: date-time */
            until_at: string;
        };
        PressCastingOut: {
            generation: number;
            /** Format: uuid */
            id: string;
        };
        PressDrynessOut: {
            /** Format: double */
            free_water_fraction: number | null;
            presses_since_dry: number | null;
            /**
             * @description * `dry` - dry
             *     * `usable` - usable
             *     * `rest` - rest
             *     * `unknown` - unknown
             * @enum {string}
             */
            word: "dry" | "usable" | "rest" | "unknown";
        };
        /** @description A part that came of it; `replaces_id` is the part of the same piece that it stands for. */
        PressedPartInRequest: {
            /** Format: uuid */
            id: string;
            piece: components["schemas"]["PressedPieceInRequest"];
            /** Format: uuid */
            replaces_id?: string | null;
            /** @default  */
            role: string;
        };
        /** @description The piece a part was pressed for; the rest is needed where the piece is new. */
        PressedPieceInRequest: {
            /** Format: uuid */
            design_id?: string | null;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            line_id?: string | null;
            /** Format: uuid */
            maker_id?: string | null;
            mark?: string | null;
            /**
             * @description * `food` - Food
             *     * `display` - Display
             * @default food
             * @enum {string}
             */
            use: "food" | "display";
        };
        /** @description What every answer to an act says. */
        PressingAnswerOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            parts: components["schemas"]["PartWholeOut"][];
            pieces: components["schemas"]["PieceBriefOut"][];
            press_since_dry: number;
            pressing: components["schemas"]["PressingRowOut"];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description Clay was pressed `count` times into those parts of the casting (as often as parts came). */
        PressingInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            casting_id: string;
            /** Format: uuid */
            corrects?: string | null;
            count?: number | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            mould_part_ids: string[];
            /** @default  */
            note: string;
            parts?: components["schemas"]["PressedPartInRequest"][];
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: uuid */
            slab_block_id?: string | null;
        };
        /** @description One pressing, by the moment it happened. */
        PressingOut: {
            /** Format: uuid */
            readonly casting_id: string;
            /** Format: int64 */
            count?: number;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id?: string;
            /** Format: uuid */
            readonly slab_block_id: string | null;
        };
        PressingRowOut: {
            /** Format: uuid */
            casting_id: string;
            count: number;
            generation: number;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            member: components["schemas"]["PersonNamedOut"];
            mould_part_ids: string[];
            /** Format: uuid */
            slab_block_id: string | null;
        };
        /** @description Some PressingRowOut rows, and where the next ones are. */
        PressingRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["PressingRowOut"][];
        };
        /** @description Pressings that a mould still gives, by the studio's own limit as its likely life. */
        PressingsLeftOut: {
            /** Format: double */
            expected: number;
            p10: number;
            p50: number;
            p90: number;
        };
        PressPartOut: {
            /** Format: uuid */
            id: string;
            name: string;
            state: string;
        };
        PressRowOut: {
            casting: components["schemas"]["PressCastingOut"];
            dryness: components["schemas"]["PressDrynessOut"];
            may_press: boolean;
            next_booking: components["schemas"]["PressBookingOut"] | null;
            owner: components["schemas"]["PersonNamedOut"] | null;
            parts: components["schemas"]["PressPartOut"][];
            place: components["schemas"]["PlaceNamedOut"] | null;
            reason: string;
            set: components["schemas"]["PressSetOut"];
        };
        PressSetOut: {
            /** Format: uuid */
            id: string;
            label: string;
            makes: string;
        };
        /** @description RFC 9457: what went wrong, and what to do about it. */
        Problem: {
            detail: string;
            /** @description Where the request has the wrong form (400). */
            errors?: {
                code: string;
                detail: string;
                /** @description JSON Pointer, as #/wall_mm. */
                pointer: string;
            }[];
            status: number;
            title: string;
            /** @description /problems/ and the code of the problem. */
            type: string;
        } & {
            [key: string]: unknown;
        };
        /** @description What every answer to an act says. */
        ProgrammeActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            programme: components["schemas"]["ProgrammeOut"];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ProgrammeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cone: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `bisque` - Bisque
             *     * `glaze` - Glaze
             *     * `test` - Test
             * @enum {string}
             */
            kind: "bisque" | "glaze" | "test";
            name: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            segments?: components["schemas"]["SegmentInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            top_c: number | string;
        };
        ProgrammeOut: {
            cone: string;
            /** Format: double */
            hours: number | null;
            /** Format: uuid */
            id: string;
            /**
             * @description * `bisque` - bisque
             *     * `glaze` - glaze
             *     * `test` - test
             * @enum {string}
             */
            kind: "bisque" | "glaze" | "test";
            name: string;
            needed: components["schemas"]["NeededOut"] | null;
            revision: number;
            segments: components["schemas"]["SegmentOut"][];
            /** Format: double */
            top_c: number;
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description Some ProgrammeOut rows, and where the next ones are. */
        ProgrammeOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ProgrammeOut"][];
        };
        /** @description The order a piece is promised to. */
        PromisedToOut: {
            /** Format: uuid */
            commission_id: string;
            /** Format: uuid */
            line_id: string;
            number: string;
            /** Format: date */
            promised_date: string | null;
            what: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        PromiseInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: date */
            promised_date: string | null;
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        PutOffOut: {
            /** Format: uuid */
            piece_id: string;
            reason: string;
        };
        /** @description When something comes to pass; null where not within the horizon. */
        QuantilesOut: {
            /** Format: double */
            p_never: number;
            /** Format: date-time */
            p10: string | null;
            /** Format: date-time */
            p50: string | null;
            /** Format: date-time */
            p90: string | null;
        };
        /** @description Instants that a time lies before with 10, 50 and 90 % chance; null where not within reach. */
        QuantileTimesOut: {
            /** Format: double */
            p_never: number;
            /** Format: date-time */
            p10: string | null;
            /** Format: date-time */
            p50: string | null;
            /** Format: date-time */
            p90: string | null;
        };
        QueueGroupOut: {
            /** @description Empty where nobody has said. */
            cone: string;
            /**
             * @description * `bisque` - bisque
             *     * `glaze` - glaze
             * @enum {string}
             */
            kind: "bisque" | "glaze";
            /** @description Null unless room was asked about. */
            layer: components["schemas"]["LayerOut"] | null;
            /** Format: double */
            litres: number;
            oldest_days: number;
            rows: components["schemas"]["QueueRowOut"][];
        };
        QueueOut: {
            /** Format: date-time */
            at: string;
            groups: components["schemas"]["QueueGroupOut"][];
            journal_seq: number;
            rule: string;
        };
        /** @description A piece that waits, and the rule's sentence on why it stands there. */
        QueueRowOut: {
            commission: components["schemas"]["OrderNamedOut"] | null;
            dry_evidence: components["schemas"]["DryEvidenceOut"];
            /** Format: date */
            due_date: string | null;
            /** @description Somebody set the rule aside for it. */
            is_put_first: boolean;
            /** Format: double */
            litres: number | null;
            maker: components["schemas"]["PersonNamedOut"] | null;
            mine: boolean;
            piece: components["schemas"]["PieceNamedOut"];
            place: components["schemas"]["PlaceNamedOut"] | null;
            reason: string;
            size: components["schemas"]["SizeOut"] | null;
            /** Format: double */
            thickest_mm: number | null;
            ticket: components["schemas"]["TicketBriefOut"] | null;
            /** Format: date-time */
            waiting_since: string;
            waits_days: number;
            warnings: components["schemas"]["WordOut"][];
        };
        QueueTurnOut: {
            /** Format: uuid */
            id: string;
            kind: string;
            reason: string;
        };
        /** @description Whether a set may be pressed, since what, and when it will be dry enough. */
        ReadinessOut: {
            advice: components["schemas"]["AdviceOut"];
            air: components["schemas"]["MouldAirOut"] | null;
            /** Format: date-time */
            at: string;
            /** Format: uuid */
            casting_id: string | null;
            cautions: string[];
            dry_at: components["schemas"]["QuantileTimesOut"] | null;
            dryness: components["schemas"]["DrynessOut"];
            expected_pressings_left: components["schemas"]["PressingsLeftOut"] | null;
            journal_seq: number;
            /** Format: uuid */
            set_id: string;
            usable_at: components["schemas"]["QuantileTimesOut"] | null;
            wear: components["schemas"]["WearOut"];
            word: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ReadingAnswerInRequest: {
            /**
             * @description * `fahrenheit` - fahrenheit
             *     * `percent` - percent
             *     * `as_given` - as_given
             *     * `leave_out` - leave_out
             * @enum {string}
             */
            answer: "fahrenheit" | "percent" | "as_given" | "leave_out";
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        ReadingAnswerOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** @description The row that is used for it now. */
            reading: components["schemas"]["ReadingOut"];
        };
        ReadingDoubtOut: {
            code: string;
            detail: string;
            /** Format: double */
            instead_c: number | null;
            /** Format: uuid */
            reading_id: string;
        };
        ReadingOut: {
            /** Format: double */
            air_c?: number | null;
            /**
             * Format: double
             * @description What its warmth is if °F was meant, as long as nobody has answered.
             */
            readonly did_you_mean_c: number | null;
            /** Format: double */
            humidity_fraction?: number | null;
            /** Format: uuid */
            id?: string;
            /** Format: date-time */
            taken_at: string;
            /**
             * @description * `used` - Used
             *     * `left_out` - Left Out
             *     * `asked` - Asked
             * @enum {string}
             */
            use?: "used" | "left_out" | "asked";
            why?: string;
        };
        /** @description Some ReadingOut rows, and where the next ones are. */
        ReadingOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ReadingOut"][];
        };
        ReadingRowInRequest: {
            air_c?: number | string | null;
            humidity_fraction?: number | string | null;
            /** Format: date-time */
            taken_at: string;
        };
        /** @description One reading, taken at `happened_at`; or several under `readings`, or a table as text/csv. */
        ReadingsInRequest: {
            air_c?: number | string | null;
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** Format: date-time */
            happened_at?: string;
            humidity_fraction?: number | string | null;
            /** Format: uuid */
            id?: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            readings?: components["schemas"]["ReadingRowInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            table?: string;
        };
        ReadingsOrSteps: components["schemas"]["ReadingOutPage"] | components["schemas"]["AirStepsOut"];
        ReadingsOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** @description Columns of a table that were not read. */
            passed_over: string[];
            /** @description The reading, where there is one only. */
            reading: components["schemas"]["ReadingOut"] | null;
            /** @description Readings that were here already. */
            repeated: number;
            stored: number;
            warnings: components["schemas"]["ReadingWarningOut"][];
        };
        ReadingWarningOut: {
            code: string;
            detail: string;
            /** Format: double */
            did_you_mean_c: number | null;
            /** Format: double */
            did_you_mean_fraction: number | null;
            /** Format: uuid */
            reading_id: string;
            /** Format: date-time */
            taken_at: string;
            /**
             * @description * `used` - Used
             *     * `left_out` - Left Out
             *     * `asked` - Asked
             * @enum {string}
             */
            use: "used" | "left_out" | "asked";
        };
        /** @description The whole recipe, in the place of the one before. */
        RecipeInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            recipe: components["schemas"]["SetRoleInRequest"][];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        RefusedOut: {
            code: string;
            device?: string | null;
            /** Format: uuid */
            id?: string;
            member: components["schemas"]["JournalPersonOut"];
            method: string;
            needed?: string;
            path: string;
            /** Format: date-time */
            tried_at: string;
        };
        /** @description Some RefusedOut rows, and where the next ones are. */
        RefusedOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["RefusedOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        ReminderAnswerInRequest: {
            /**
             * @description * `done` - done
             *     * `snooze` - snooze
             *     * `let_go` - let_go
             * @enum {string}
             */
            answer: "done" | "snooze" | "let_go";
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * Format: date-time
             * @description Until when it is put off.
             */
            until?: string;
        };
        /** @description What every answer to an act says. */
        ReminderAnswerOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            reminder: components["schemas"]["ReminderOut"];
        };
        ReminderOut: {
            /** @description `let_go` after the third time put off. */
            readonly asks: string | null;
            body?: string;
            /**
             * @description * `A` - A
             *     * `B` - B
             *     * `C` - C
             *     * `D` - D
             * @enum {string}
             */
            readonly class: "A" | "B" | "C" | "D";
            /** Format: date-time */
            due_at: string;
            /** Format: uuid */
            id?: string;
            kind: string;
            link?: string;
            readonly objects: {
                [key: string]: unknown;
            }[];
            /** Format: date-time */
            snoozed_until?: string | null;
            /** Format: int64 */
            snoozes?: number;
            /**
             * @description * `due` - Due
             *     * `sent` - Sent
             *     * `done` - Done
             *     * `snoozed` - Snoozed
             *     * `let_go` - Let Go
             *     * `withdrawn` - Withdrawn
             * @enum {string}
             */
            state?: "due" | "sent" | "done" | "snoozed" | "let_go" | "withdrawn";
            title: string;
        };
        /** @description Some ReminderOut rows, and where the next ones are. */
        ReminderOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ReminderOut"][];
        };
        /** @description What every act says of itself; each act adds its own fields. */
        RemovalInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        ReportedPieceOut: {
            /** Format: uuid */
            id: string;
            mark: string;
        };
        /** @description How one thing came out, and where it was put. */
        ResultInRequest: {
            /** Format: uuid */
            place_id?: string | null;
            /** Format: uuid */
            placement_id: string;
            /**
             * @description * `fired` - fired
             *     * `not_fired` - not_fired
             *     * `broken` - broken
             *     * `damp` - damp
             * @enum {string}
             */
            result: "fired" | "not_fired" | "broken" | "damp";
        };
        /** @description Takes back the act that `corrects` names. */
        RetractionInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects: string;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        RetractionOut: {
            /** Format: uuid */
            corrects: string;
            /** Format: uuid */
            id: string;
            journal_seq: number;
            loads: components["schemas"]["LoadBriefOut"][];
            pieces: components["schemas"]["PieceBriefOut"][];
        };
        /** @description A link is taken back. */
        RevocationInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        RiskOut: {
            code: string;
            words: string;
        };
        RoleCountOut: {
            count: number;
            role: string;
        };
        RoomLeftOut: {
            /** @description Where the first kind of ware named was counted; may be empty. */
            spots: components["schemas"]["RoomSpotOut"][];
            words: string;
        };
        RoomSpotOut: {
            /** Format: double */
            depth_mm: number;
            is_round: boolean;
            /** Format: double */
            width_mm: number;
            /**
             * Format: double
             * @description Its middle, from the middle of the shelf.
             */
            x_mm: number;
            /** Format: double */
            y_mm: number;
        };
        RunOut: {
            /** Format: date-time */
            asked_at: string;
            /** Format: date-time */
            done_at?: string | null;
            /** Format: uuid */
            id?: string;
            inputs: {
                [key: string]: unknown;
            };
            problem: {
                [key: string]: unknown;
            } | null;
            /** Format: double */
            progress_fraction?: number;
            result: {
                [key: string]: unknown;
            } | null;
            /**
             * @description * `queued` - Queued
             *     * `running` - Running
             *     * `done` - Done
             *     * `refused` - Refused
             *     * `failed` - Failed
             *     * `cancelled` - Cancelled
             * @enum {string}
             */
            state?: "queued" | "running" | "done" | "refused" | "failed" | "cancelled";
            task: string;
        };
        SearchOut: {
            /** @description There is more: ask with more letters. */
            is_cut: boolean;
            results: components["schemas"]["HitOut"][];
        };
        /** @description One leg; without a rate the kiln goes as fast as it can. */
        SegmentInRequest: {
            /** @default 0 */
            hold_min: number;
            /** Format: double */
            rate_c_per_h?: number | null;
            to_c: number | string;
        };
        SegmentOut: {
            hold_min: number;
            order: number;
            /** Format: double */
            rate_c_per_h: number | null;
            /** Format: double */
            to_c: number;
        };
        /** @description What every answer to an act says. */
        ServiceActOut: {
            health: components["schemas"]["KilnHealthOut"];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            service: components["schemas"]["ServiceOut"];
        };
        /** @description One thing done to a kiln or found on it: `ohms` want how far over new, `shelves` a count. */
        ServiceInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `elements` - Elements
             *     * `ohms` - Ohms
             *     * `sensor` - Sensor
             *     * `vent` - Vent
             *     * `relay` - Relay
             *     * `shelves` - Shelves
             *     * `note` - Note
             * @enum {string}
             */
            kind: "elements" | "ohms" | "sensor" | "vent" | "relay" | "shelves" | "note";
            /** @default  */
            note: string;
            /** @description Resistance over that of new elements: 0.07, or 7 %. */
            over_new_fraction?: number | string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            shelf_count?: number | null;
            /** @default  */
            words: string;
        };
        ServiceOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /**
             * @description * `elements` - Elements
             *     * `ohms` - Ohms
             *     * `sensor` - Sensor
             *     * `vent` - Vent
             *     * `relay` - Relay
             *     * `shelves` - Shelves
             *     * `note` - Note
             * @enum {string}
             */
            kind: "elements" | "ohms" | "sensor" | "vent" | "relay" | "shelves" | "note";
            member: components["schemas"]["PersonNamedOut"];
            /** Format: double */
            over_new_fraction: number | null;
            shelf_count: number | null;
            title: string;
            words: string;
        };
        /** @description Some ServiceOut rows, and where the next ones are. */
        ServiceOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["ServiceOut"][];
        };
        /** @description A piece of a planned set that has an id or a mark already. */
        SetPieceInRequest: {
            /** Format: uuid */
            id: string;
            mark?: string | null;
            role: string;
        };
        /** @description How many pieces of a design one set holds, and as what. */
        SetRoleInRequest: {
            /** @default 1 */
            count: number;
            /** Format: uuid */
            design_id: string;
            role: string;
        };
        SetRoleOut: {
            count: number;
            /** Format: uuid */
            design_id: string;
            design_name: string;
            noun: string;
            role: string;
        };
        /** @description Plan whole sets of a line; those of one set are matched. */
        SetsPlanInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            body_id?: string | null;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** Format: uuid */
            maker_id?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            pieces?: components["schemas"]["SetPieceInRequest"][];
            /** Format: uuid */
            place_id?: string | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            sets: number;
        };
        /** @description What every answer to an act says. */
        SetsPlannedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            matches: number;
            pieces: components["schemas"]["PieceBriefOut"][];
            warnings: components["schemas"]["WordOut"][];
        };
        /** @description What every answer to an act says. */
        SettingsChangedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            settings: components["schemas"]["SettingsOut"];
        };
        SettingsOut: {
            /** Format: double */
            assumed_air_c?: number;
            /** Format: double */
            assumed_humidity_fraction?: number;
            /** Format: int64 */
            bisque_fee_minor_per_l?: number | null;
            bisque_may_touch?: boolean;
            currency?: string;
            /**
             * @description * `wet` - Wet
             *     * `dry` - Dry
             *     * `bisque` - Bisque
             *     * `fired` - Fired
             * @enum {string}
             */
            fee_measured?: "wet" | "dry" | "bisque" | "fired";
            /** Format: int64 */
            found_notice_days?: number;
            /** Format: int64 */
            glaze_fee_minor_per_l?: number | null;
            /** Format: double */
            glaze_gap_mm?: number;
            /** Format: double */
            mould_dry_below_fraction?: number;
            /** Format: double */
            mould_usable_below_fraction?: number;
            /** Format: double */
            open_kiln_below_c?: number;
            quiet_from?: string;
            quiet_until?: string;
            /** Format: double */
            refire_headroom_mm?: number;
            /** Format: int64 */
            revision?: number;
            /** Format: double */
            wall_limit_mm?: number;
        };
        ShareAnswerInRequest: {
            /**
             * @description * `yes` - yes
             *     * `no` - no
             * @enum {string}
             */
            answer: "yes" | "no";
            /** Format: uuid */
            approval_id: string;
            /** @default  */
            words: string;
        };
        ShareAnswerOut: {
            /**
             * @description * `yes` - yes
             *     * `no` - no
             * @enum {string}
             */
            answer: "yes" | "no";
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
        };
        /** @description The shared phone that asks, and who may pick themselves on it. */
        SharedPhoneOut: {
            /** Format: uuid */
            id: string;
            name: string;
            readonly people: components["schemas"]["HolderOut"][];
            studio: components["schemas"]["MyStudioOut"];
        };
        SharedPhotoOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
        };
        /** @description Some alike shelves: a round one has a diameter, any other a width and a depth. */
        ShelfInRequest: {
            count: number;
            depth_mm?: number | string | null;
            diameter_mm?: number | string | null;
            /**
             * @description * `rect` - Rect
             *     * `round` - Round
             * @enum {string}
             */
            shape: "rect" | "round";
            thickness_mm: number | string;
            width_mm?: number | string | null;
        };
        ShelfOut: {
            /** Format: int64 */
            count: number;
            /** Format: double */
            depth_mm?: number | null;
            /** Format: double */
            diameter_mm?: number | null;
            /** Format: uuid */
            id?: string;
            /**
             * @description * `rect` - Rect
             *     * `round` - Round
             * @enum {string}
             */
            shape: "rect" | "round";
            /** Format: double */
            thickness_mm: number;
            /** Format: double */
            width_mm?: number | null;
        };
        ShelfShapeOut: {
            /** Format: double */
            depth_mm: number;
            /**
             * @description * `rect` - rect
             *     * `round` - round
             * @enum {string}
             */
            shape: "rect" | "round";
            /** Format: double */
            thickness_mm: number;
            /** Format: double */
            width_mm: number;
        };
        /** @description What every answer to an act says. */
        SignedOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            paper: components["schemas"]["SignedPapersOut"];
        };
        SignedPapersOut: {
            /** Format: uuid */
            id: string;
            is_declared: boolean;
            sha256: string;
            /** Format: date-time */
            signed_at: string;
            signed_by: string;
            title: string;
        };
        SignInInRequest: {
            password: string;
            username: string;
        };
        SizeOut: {
            /** Format: double */
            height_mm: number;
            /** @description The clay's shrinkage is not known. */
            is_assumed: boolean;
            is_round: boolean;
            /**
             * @description * `dry` - dry
             *     * `bisque` - bisque
             * @enum {string}
             */
            measured: "dry" | "bisque";
            /** Format: double */
            x_mm: number;
            /** Format: double */
            y_mm: number;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        SlabBlockInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            batch_ids?: string[];
            body_ids: string[];
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            label: string;
            /** Format: date */
            laid_on?: string | null;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** Format: date-time */
            used_up_at?: string | null;
        };
        SlabBlockOut: {
            readonly batches: {
                [key: string]: string;
            }[];
            readonly bodies: {
                [key: string]: string;
            }[];
            readonly cautions: string[];
            /** Format: uuid */
            id?: string;
            label: string;
            /** Format: date */
            laid_on?: string | null;
            /** Format: date-time */
            used_up_at?: string | null;
        };
        /** @description Some SlabBlockOut rows, and where the next ones are. */
        SlabBlockOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["SlabBlockOut"][];
        };
        SpotOut: {
            stage: string;
            state: string;
            words: string;
        };
        StageCountOut: {
            count: number;
            stage: string;
            state: string;
            words: string;
        };
        /**
         * @description A piece came to a spot of the job. Going back wants a `reason`; a loss may say its cause.
         *
         *     `reason` "catching_up" lets a step stand that skips others; "found" brings a missing piece back.
         */
        StageEventInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** @default  */
            cause: string;
            /** @default false */
            cause_is_guess: boolean;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: uuid
             * @description What it was dipped in, where it came to be glazed.
             */
            glaze_batch_id?: string | null;
            /**
             * @description * `first` - First
             *     * `second` - Second
             * @default
             * @enum {string}
             */
            grade: "first" | "second" | "";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /** Format: uuid */
            part_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            place_id?: string | null;
            /** @default  */
            reason: string;
            /**
             * @description * `none` - None
             *     * `plain` - Plain
             *     * `mixed` - Mixed
             * @default
             * @enum {string|null}
             */
            reclaim: "none" | "plain" | "mixed" | "" | null;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `model` - model
             *     * `mould` - mould
             *     * `pressing` - pressing
             *     * `assembly` - assembly
             *     * `drying` - drying
             *     * `bisque` - bisque
             *     * `glaze` - glaze
             *     * `finished` - finished
             *     * `delivered` - delivered
             *     * `lost` - lost
             * @enum {string}
             */
            stage: "model" | "mould" | "pressing" | "assembly" | "drying" | "bisque" | "glaze" | "finished" | "delivered" | "lost";
            /**
             * @description * `wants_model` - wants_model
             *     * `wants_mould` - wants_mould
             *     * `to_press` - to_press
             *     * `in_mould` - in_mould
             *     * `out` - out
             *     * `joined` - joined
             *     * `drying` - drying
             *     * `bone_dry` - bone_dry
             *     * `in_bisque` - in_bisque
             *     * `bisqued` - bisqued
             *     * `glazed` - glazed
             *     * `in_glaze` - in_glaze
             *     * `glaze_fired` - glaze_fired
             *     * `checked` - checked
             *     * `packed` - packed
             *     * `delivered` - delivered
             *     * `scrapped` - scrapped
             *     * `missing` - missing
             *     * `let_go` - let_go
             * @enum {string}
             */
            state: "wants_model" | "wants_mould" | "to_press" | "in_mould" | "out" | "joined" | "drying" | "bone_dry" | "in_bisque" | "bisqued" | "glazed" | "in_glaze" | "glaze_fired" | "checked" | "packed" | "delivered" | "scrapped" | "missing" | "let_go";
        };
        StageEventRowOut: {
            cause: string;
            cause_is_guess: boolean;
            /** Format: uuid */
            glaze_batch_id: string | null;
            grade: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            is_interrupted: boolean;
            /** Format: uuid */
            occasion_id: string | null;
            occasion_name: string;
            /** Format: uuid */
            part_id: string | null;
            /** Format: uuid */
            place_id: string | null;
            reason: string;
            reclaim: string;
            stage: string;
            state: string;
        };
        /** @description Some StageEventRowOut rows, and where the next ones are. */
        StageEventRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["StageEventRowOut"][];
        };
        /** @description One thing that was said of a mould part. */
        StateSaidOut: {
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            reason: string;
            /**
             * @description * `whole` - Whole
             *     * `chipped` - Chipped
             *     * `out_of_use` - Out Of Use
             *     * `missing` - Missing
             * @enum {string}
             */
            state: "whole" | "chipped" | "out_of_use" | "missing";
        };
        /** @description Some StateSaidOut rows, and where the next ones are. */
        StateSaidOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["StateSaidOut"][];
        };
        StayOut: {
            /** @description How it was covered while it dried; else empty. */
            cover: string;
            /** Format: date-time */
            from_at: string;
            stage: string;
            state: string;
            /**
             * Format: date-time
             * @description Null while it lasts.
             */
            until_at: string | null;
        };
        /** @description What one step costs: the share that survives it, and its days. */
        StepFigureOut: {
            entered: number;
            /** Format: double */
            least_days: number;
            /** @description Of the studio's own pieces. */
            lost: number;
            /** Format: double */
            most_days: number;
            step: string;
            /** Format: double */
            survival_fraction: number;
            /** Format: double */
            usual_days: number;
            words: string;
        };
        StopChoiceOut: {
            /**
             * @description * `resume` - resume
             *     * `refire` - refire
             *     * `accept_by_cone` - accept_by_cone
             * @enum {string}
             */
            code: "resume" | "refire" | "accept_by_cone";
            /** @description The cones seen speak for it. */
            is_backed: boolean;
            /** @description The event to send. */
            kind: string;
            outcome: string;
            words: string;
        };
        StoppedFactsOut: {
            /** Format: double */
            above_600_h: number;
            /** Format: double */
            gap_h: number;
            /** Format: date-time */
            highest_at: string | null;
            /** Format: double */
            highest_c: number | null;
            /** Format: date-time */
            last_at: string | null;
            /** Format: double */
            last_c: number | null;
        };
        StoppedOut: {
            caution: string;
            choices: components["schemas"]["StopChoiceOut"][];
            facts: components["schemas"]["StoppedFactsOut"];
        };
        SumWarningOut: {
            code: string;
            detail: string;
        };
        /** @description What is changed from now on; a thickness, from the pressing on. What is left out stays. */
        SupposedInRequest: {
            /**
             * @description * `open` - open
             *     * `loose` - loose
             *     * `tucked` - tucked
             *     * `sealed` - sealed
             * @enum {string}
             */
            cover?: "open" | "loose" | "tucked" | "sealed";
            /** Format: uuid */
            place_id?: string | null;
            thickest_mm?: number | string;
        };
        /** @description The piece's own dates, and those if so: null where no estimate would be sound. */
        SupposedOut: {
            as_it_is: components["schemas"]["WindowsOut"] | null;
            /** Format: date-time */
            at: string;
            confidence: components["schemas"]["ConfidenceOut"];
            /** @description Of the part that is last to dry, from now on. */
            curve: components["schemas"]["CurveOut"] | null;
            rests_on: string[];
            unreachable: string[];
            warnings: components["schemas"]["SumWarningOut"][];
            windows: components["schemas"]["WindowsOut"] | null;
        };
        TallestOut: {
            /** Format: double */
            height_mm: number;
            mark: string;
        };
        /** @description One act of a story. What was taken back is there still, and says by whom and when. */
        TellingOut: {
            /** Format: uuid */
            corrects: string | null;
            device: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            is_also_said: boolean;
            /** @description Waits for two stories to be settled. */
            is_held: boolean;
            is_late: boolean;
            is_taken_back: boolean;
            /** @description Settled that it did not happen to this piece. */
            left_out_by: components["schemas"]["PersonNamedOut"] | null;
            member: components["schemas"]["PersonNamedOut"];
            note: string | null;
            photo_ids: string[];
            /** Format: date-time */
            taken_back_at: string | null;
            taken_back_by: components["schemas"]["PersonNamedOut"] | null;
            verb: string;
            words: string;
            /** Format: date-time */
            written_at: string;
        };
        /** @description Some TellingOut rows, and where the next ones are. */
        TellingOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["TellingOut"][];
        };
        /** @description What every answer to an act says. */
        TestReportActOut: {
            cautions: string[];
            /** Format: uuid */
            id: string;
            journal_seq: number;
            report: components["schemas"]["JudgedReportOut"];
        };
        /**
         * @description What a laboratory wrote. `…_is_below`: it wrote "less than" that value.
         *
         *     The depth and volume of the tested ware may be left out where the piece is named: then they are
         *     its design's.
         */
        TestReportInRequest: {
            /** Format: double */
            area_dm2?: number | null;
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** @default false */
            cadmium_is_below: boolean;
            /** Format: double */
            cadmium_value: number;
            /** Format: uuid */
            commission_id?: string | null;
            /**
             * @description * `table` - table
             *     * `cooking` - cooking
             *     * `storage` - storage
             * @enum {string|null}
             */
            contact?: "table" | "cooking" | "storage" | null;
            /** Format: uuid */
            corrects?: string | null;
            depth_mm?: number | string | null;
            /** @default  */
            glaze: string;
            /** Format: uuid */
            glaze_batch_id?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            laboratory: string;
            /** @default false */
            lead_is_below: boolean;
            /** Format: double */
            lead_value: number;
            /** @default false */
            lid_cadmium_is_below: boolean;
            /**
             * Format: double
             * @description What the inside of the lid gave off, tested apart. [mg]
             */
            lid_cadmium_mg?: number | null;
            /** @default false */
            lid_lead_is_below: boolean;
            /**
             * Format: double
             * @description What the inside of the lid gave off, tested apart. [mg]
             */
            lid_lead_mg?: number | null;
            /** Format: uuid */
            load_id?: string | null;
            /** @default  */
            note: string;
            /** @default  */
            occasion_name: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** Format: uuid */
            piece_id?: string | null;
            /** Format: date */
            reported_on: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /**
             * @description * `mg_per_l` - Per Litre
             *     * `mg_per_dm2` - Per Area
             * @enum {string}
             */
            unit: "mg_per_l" | "mg_per_dm2";
            volume_ml?: number | string | null;
        };
        /** @description What a laboratory wrote, as it wrote it. */
        TestReportOut: {
            /** Format: double */
            area_dm2: number | null;
            cadmium_is_below: boolean;
            /** Format: double */
            cadmium_value: number;
            /** Format: uuid */
            commission_id: string | null;
            contact: string;
            /** Format: double */
            depth_mm: number | null;
            glaze: string;
            glaze_batch: components["schemas"]["GlazeNamedOut"] | null;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            is_lid_tested: boolean;
            laboratory: string;
            lead_is_below: boolean;
            /** Format: double */
            lead_value: number;
            lid_cadmium_is_below: boolean;
            /** Format: double */
            lid_cadmium_mg: number | null;
            lid_lead_is_below: boolean;
            /** Format: double */
            lid_lead_mg: number | null;
            member: components["schemas"]["PersonNamedOut"];
            /** Format: uuid */
            occasion_id: string | null;
            occasion_name: string;
            piece: components["schemas"]["ReportedPieceOut"] | null;
            /** Format: date */
            reported_on: string;
            /**
             * @description * `mg_per_l` - Per Litre
             *     * `mg_per_dm2` - Per Area
             * @enum {string}
             */
            unit: "mg_per_l" | "mg_per_dm2";
            /** Format: double */
            volume_ml: number | null;
        };
        /** @description So many of something that is no piece here: test bars, shelves of others. */
        ThingForLoadInRequest: {
            /** @default 1 */
            count: number;
            depth_mm?: number | string | null;
            height_mm?: number | string | null;
            /**
             * Format: uuid
             * @description Of the placement.
             */
            id?: string;
            /** @default false */
            is_round: boolean;
            level?: number | null;
            /** Format: double */
            rotation_deg?: number;
            what: string;
            width_mm?: number | string | null;
            x_mm?: number | string | null;
            y_mm?: number | string | null;
        };
        /** @description The thinnest section of an uneven part: too stiff to join before the rest of it. */
        ThinOut: {
            /** Format: date-time */
            closes: string;
            /** Format: double */
            thinnest_mm: number;
        };
        /** @description What every answer to an act says. */
        TicketActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            ticket: components["schemas"]["FiringTicketOut"];
            warnings: components["schemas"]["WordOut"][];
        };
        TicketBriefOut: {
            cone: string;
            /** @description What was wrong, and what was mended since. */
            why: string;
            words: string;
        };
        /** @description Which cone a piece waits for, and what to mind; `fault` and `mended` of ware fired before. */
        TicketInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            cone: string;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * @description * `crawled` - Crawled
             *     * `blistered` - Blistered
             *     * `pinholed` - Pinholed
             *     * `crazed` - Crazed
             *     * `underfired` - Underfired
             *     * `thin` - Thin
             *     * `ran` - Ran
             *     * `colour` - Colour
             *     * `other` - Other
             * @default
             * @enum {string}
             */
            fault: "crawled" | "blistered" | "pinholed" | "crazed" | "underfired" | "thin" | "ran" | "colour" | "other" | "";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `bisque` - bisque
             *     * `glaze` - glaze
             * @enum {string}
             */
            kind: "bisque" | "glaze";
            mended?: ("ground" | "washed" | "filled" | "glazed_again" | "glazed_thicker" | "nothing")[];
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
            /** @default  */
            words: string;
        };
        /** @description What every act says of itself; each act adds its own fields. */
        TokenInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /** @description Some of your own; a sensor needs `record_climate` only. */
            grants: ("see_studio" | "record_climate" | "report_damage" | "move_place" | "add_photo" | "put_on_load" | "press_own" | "check_own" | "cover_own" | "advance_own" | "advance_any" | "settle_clashes_any" | "merge_pieces" | "scrap_own" | "plan_pieces" | "book_moulds" | "edit_own_moulds" | "promise_own" | "share_own" | "see_own_prices" | "build_loads" | "settle_loads" | "record_firings" | "plan_firings" | "override_dryness" | "service_kilns" | "manage_members" | "manage_settings" | "set_fees" | "see_all_prices" | "lift_display_only" | "sign_papers" | "read_everything" | "erase_person")[];
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            name: string;
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        /** @description What every answer to an act says. */
        TokenMadeOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            /** @description `Authorization: Token <key>`; shown this once. */
            key: string;
            token: components["schemas"]["TokenOut"];
        };
        TokenOut: {
            /** Format: uuid */
            device_id: string;
            grants?: unknown;
            /** Format: uuid */
            id?: string;
            /** Format: date-time */
            made_at: string;
            /** Format: uuid */
            member_id: string;
            name: string;
            prefix: string;
            /** Format: date-time */
            revoked_at?: string | null;
            /** Format: date-time */
            used_at?: string | null;
        };
        /** @description Some TokenOut rows, and where the next ones are. */
        TokenOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["TokenOut"][];
        };
        /** @description How it feels; without a part, the whole piece. */
        TouchCheckInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * @description * `fine` - Fine
             *     * `soft` - Soft
             *     * `leather_hard` - Leather Hard
             *     * `too_stiff` - Too Stiff
             *     * `bone_dry` - Bone Dry
             * @enum {string}
             */
            feel: "fine" | "soft" | "leather_hard" | "too_stiff" | "bone_dry";
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /** @default  */
            note: string;
            /** Format: uuid */
            part_id?: string | null;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        TouchCheckRowOut: {
            feel: string;
            /** Format: date-time */
            happened_at: string;
            /** Format: uuid */
            id: string;
            /** Format: uuid */
            part_id: string | null;
        };
        /** @description Some TouchCheckRowOut rows, and where the next ones are. */
        TouchCheckRowOutPage: {
            /** @description Address of the next page. */
            next: string | null;
            results: components["schemas"]["TouchCheckRowOut"][];
        };
        /** @description What every answer to an act says. */
        TurnActOut: {
            /** Format: uuid */
            id: string;
            journal_seq: number;
            turn: components["schemas"]["QueueTurnOut"];
        };
        /** @description A piece is put first for its next firing of a kind, with a reason that all can read. */
        TurnInRequest: {
            /**
             * Format: int64
             * @description Highest journal number this device had seen.
             * @default 0
             */
            based_on: number;
            /** Format: uuid */
            corrects?: string | null;
            /**
             * Format: date-time
             * @description When it happened, as the person says.
             */
            happened_at: string;
            /**
             * Format: uuid
             * @description Made by the writer; the same id sent again is the same act.
             */
            id: string;
            /**
             * @description * `bisque` - bisque
             *     * `glaze` - glaze
             * @enum {string}
             */
            kind: "bisque" | "glaze";
            /** @default  */
            note: string;
            /**
             * @description Photos of what the act tells, up to 12; each was sent before it.
             * @default []
             */
            photo_ids: string[];
            /** @default  */
            reason: string;
            /**
             * Format: date-time
             * @description The sender's clock at sending.
             */
            sent_at?: string;
        };
        UnitsInRequest: {
            /**
             * @description * `mm` - mm
             *     * `in` - in
             * @enum {string}
             */
            length?: "mm" | "in";
            /**
             * @description * `g` - g
             *     * `lb` - lb
             * @enum {string}
             */
            mass?: "g" | "lb";
            /**
             * @description * `c` - c
             *     * `f` - f
             * @enum {string}
             */
            temperature?: "c" | "f";
        };
        UnitsOut: {
            /**
             * @description * `mm` - mm
             *     * `in` - in
             * @enum {string}
             */
            length: "mm" | "in";
            /**
             * @description * `g` - g
             *     * `lb` - lb
             * @enum {string}
             */
            mass: "g" | "lb";
            /**
             * @description * `c` - c
             *     * `f` - f
             * @enum {string}
             */
            temperature: "c" | "f";
        };
        VerdictOut: {
            /**
             * @description * `within` - within
             *     * `over` - over
             *     * `not_tested` - not_tested
             *     * `not_told` - not_told
             * @enum {string}
             */
            code: "within" | "over" | "not_tested" | "not_told";
            words: string;
        };
        VisitOut: {
            /** Format: date-time */
            at: string;
            /** Format: uuid */
            occasion_id: string | null;
            occasion_name: string;
            reason: string;
            stage: string;
            state: string;
            words: string;
        };
        /** @description How worn the most used part is, in the studio's own limits. */
        WearOut: {
            looks_again_at: number | null;
            pressings: number;
            pressings_left: number | null;
            word: string;
        };
        /** @description What the weighings say: water left at the last one, and whether the weight is steady. */
        WeighedOut: {
            is_steady: boolean | null;
            /** @description p10, p50, p90 */
            water_left: number[] | null;
            words: string;
        };
        WindowOut: {
            closes: components["schemas"]["QuantilesOut"] | null;
            opens: components["schemas"]["QuantilesOut"] | null;
        };
        WindowsOut: {
            bisque: components["schemas"]["QuantilesOut"];
            demould: components["schemas"]["WindowOut"];
            join: components["schemas"]["WindowOut"];
            shrinkage_ended: components["schemas"]["QuantilesOut"];
        };
        /** @description A warning or a caution: a code for screens, a sentence for people. */
        WordOut: {
            code: string;
            detail: string;
        };
        WorstGapOut: {
            /**
             * Format: double
             * @description Reading less set point.
             */
            gap_c: number;
            /** Format: uuid */
            reading_id: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    invitation_link_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                token: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LinkOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitation_link_accept: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                token: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewcomerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    me_read: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    me_change: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedMeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    session_begin: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    session_end: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description No response body */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    shares_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                token: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        [key: string]: unknown;
                    };
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    shares_answer: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                token: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ShareAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShareAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_approvals_answers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                approval_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ApprovalAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApprovalActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_assignments_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AssignmentInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AssignedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    away_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AwayOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    away_say: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AwayInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AwayMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    away_call_off: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                away_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description No response body */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    backups_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BackupsOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    backups_ask: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BackupAskInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BackupAskOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_bench_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BenchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_bulk_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BulkInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulkOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    claims_list: {
        parameters: {
            query?: {
                found?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_claims_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClaimInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    clashes_list: {
        parameters: {
            query?: {
                piece?: string;
                /**
                 * @description * `open` - Open
                 *     * `answered` - Answered
                 *     * `gone` - Gone
                 */
                state?: "open" | "answered" | "gone";
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClashOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    clashes_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                clash_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClashWholeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_clashes_answers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                clash_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClashAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClashAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    clay_bodies_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BodyOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_clay_bodies_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BodyInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BodyOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_clay_bodies_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BodyOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_clay_bodies_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedBodyChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BodyOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    test_bars_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BarOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_clay_bodies_test_bars_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BarInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BarOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    colour_batches_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_colour_batches_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BatchInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_colour_batches_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_colour_batches_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedBatchChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionListOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CommissionInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedCommissionChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    approvals_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApprovalListOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_approvals_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ApprovalInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApprovalActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_closings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClosingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_deliveries_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DeliveryInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeliveryOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_history_table: {
        parameters: {
            query?: {
                /**
                 * @description * `all` - all
                 *     * `losses` - losses
                 *     * `firings` - firings
                 *     * `promises` - promises
                 *     * `clients` - clients
                 *     * `photos` - photos
                 */
                filter?: "all" | "losses" | "firings" | "promises" | "clients" | "photos";
            };
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_history: {
        parameters: {
            query?: {
                /**
                 * @description * `all` - all
                 *     * `losses` - losses
                 *     * `firings` - firings
                 *     * `promises` - promises
                 *     * `clients` - clients
                 *     * `photos` - photos
                 */
                filter?: "all" | "losses" | "firings" | "promises" | "clients" | "photos";
            };
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderToldOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_lines_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OrderLineInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderLineActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    links_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderLinkListOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_links_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LinkInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LinkMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    links_preview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LinkPreviewInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LinkPreviewOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_lives: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionLivesOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_outlook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OutlookOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_papers: {
        parameters: {
            query?: {
                /**
                 * @description How makers are named, as was agreed with them.
                 *
                 *     * `nobody` - Nobody
                 *     * `initials` - Initials
                 *     * `first_name` - First Name
                 */
                people?: "nobody" | "initials" | "first_name";
            };
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_papers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PapersInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_papers_signed: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                copy_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    commissions_papers_facts: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PapersFactsOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_commissions_promises_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                commission_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PromiseInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommissionActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    designs_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DesignOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_designs_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DesignMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_designs_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                design_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DesignOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_designs_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                design_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedDesignChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DesignMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    devices_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    devices_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DeviceInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    devices_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                device_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    devices_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                device_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description No response body */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    devices_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                device_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedDeviceChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeviceChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    exports_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    found_list: {
        parameters: {
            query?: {
                /**
                 * @description * `open` - Open
                 *     * `returned` - Returned
                 *     * `disposed` - Disposed
                 */
                state?: "open" | "returned" | "disposed";
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_found_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FoundInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    found_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                found_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundWholeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_found_askings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                found_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AskingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_found_endings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                found_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoundActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    glaze_batches_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GlazeBatchOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_glaze_batches_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["GlazeBatchInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GlazeBatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_glaze_batches_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GlazeBatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_glaze_batches_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedGlazeBatchChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GlazeBatchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    held_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HeldActOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    held_answer: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                held_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["HeldAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HeldAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitations_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitations_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    invitations_withdraw: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                invitation_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description No response body */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    journal_list: {
        parameters: {
            query?: {
                /** @description Only what was heard after this number. */
                after?: number;
                /** @description Only what tells of this thing. */
                subject?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JournalEntryOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kiln_queue: {
        parameters: {
            query?: {
                cone?: string;
                /** @description Show ware that is not called bone dry too. */
                drying?: boolean;
                /**
                 * @description * `bisque` - bisque
                 *     * `glaze` - glaze
                 */
                kind?: "bisque" | "glaze";
                /** @description Room of a layer: say whose ware gets it. */
                room_l?: number;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["QueueOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kilns_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnsOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_kilns_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KilnInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kilns_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_kilns_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedKilnChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kiln_events_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnEventOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_kilns_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KilnEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kiln_service_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_kilns_service_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                kiln_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ServiceInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ServiceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_lines_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                line_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedOrderLineChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderLineActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_lines_plannings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                line_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetsPlanInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SetsPlannedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_lines_recipe_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                line_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecipeInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderLineActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_links_revocations_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                link_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RevocationInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LinkActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    load_clashes_list: {
        parameters: {
            query?: {
                /**
                 * @description * `open` - open
                 *     * `answered` - answered
                 */
                state?: "open" | "answered";
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadClashListOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    load_clashes_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                clash_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClashWholeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_load_clashes_answers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                clash_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LoadClashAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadClashAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_list: {
        parameters: {
            query?: {
                from?: string;
                kiln?: string;
                /** @description Loads that this piece is or was in. */
                piece?: string;
                /** @description One or several of the states, with commas between. */
                state?: string;
                until?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadBriefOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LoadInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadScreenOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedLoadChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    cones_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ConeSeenOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_cones_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ConesInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ConesOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_cooling: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CoolingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_could_go: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CouldGoOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    load_events_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadEventOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LoadEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_fees: {
        parameters: {
            query?: {
                /** @description Show this cost shared by volume in place of the tariff. */
                cost_minor?: number;
            };
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FeesOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_fees_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FeesInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FeesActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    loads_fit: {
        parameters: {
            query?: {
                /** @description Ids of pieces to try beside what is placed, commas between. */
                pieces?: string;
            };
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FitOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_placements_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlacementsInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlacedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    kiln_readings_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnReadingOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_loads_readings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                load_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["KilnReadingsInRequest"];
                "text/csv": string;
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KilnReadOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    masters_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MasterOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_masters_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MasterInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MasterOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_masters_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                master_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MasterEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MasterOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    matches_list: {
        parameters: {
            query?: {
                piece?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MatchOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_matches_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MatchInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MatchActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    members_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MemberOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    members_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                member_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MemberOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    members_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                member_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedMemberChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MemberChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    members_leave: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                member_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LeavingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LeavingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_parts_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                part_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldPartOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mould_part_events_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                part_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StateSaidOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_parts_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                part_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MouldPartEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldPartEventOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mould_sets_list: {
        parameters: {
            query?: {
                /** @description Only sets for this design. */
                design?: string;
                /** @description Only this member's sets. */
                owner?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldSetOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MouldSetInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldSetOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldSetOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedMouldSetChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldSetOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mould_bookings_list: {
        parameters: {
            query?: {
                /** @description Those that are over, too. */
                all?: boolean;
            };
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BookingOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_bookings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BookingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BookingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_bookings_endings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                booking_id: string;
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BookingEndInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BookingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    castings_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CastingOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_castings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CastingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PouredOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    crumb_check_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CrumbCheckOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mould_inspections_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InspectionRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_inspections_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InspectionInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InspectionRowOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pressings_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PressingRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_pressings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PressingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PressingAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_readiness_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadinessOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    mould_weighings_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldWeighingRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_mould_sets_weighings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                set_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MouldWeighingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MouldWeighingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    number_blocks_lease: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NumberBlockInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NumberBlockOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    opening_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    opening_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedOpeningInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    part_events_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                part_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartEventRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_parts_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                part_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PartEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    photos_list: {
        parameters: {
            query?: {
                /** @description Only what shows this thing. */
                subject?: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotoOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_photos_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": components["schemas"]["PhotoInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotoActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    photos_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                photo_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotoOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    photos_image: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                photo_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    photos_thumbnail: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                photo_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_list: {
        parameters: {
            query?: {
                maker?: string;
                place?: string;
                q?: string;
                /**
                 * @description * `model` - model
                 *     * `mould` - mould
                 *     * `pressing` - pressing
                 *     * `assembly` - assembly
                 *     * `drying` - drying
                 *     * `bisque` - bisque
                 *     * `glaze` - glaze
                 *     * `finished` - finished
                 *     * `delivered` - delivered
                 *     * `lost` - lost
                 */
                stage?: "model" | "mould" | "pressing" | "assembly" | "drying" | "bisque" | "glaze" | "finished" | "delivered" | "lost";
                /**
                 * @description * `wants_model` - wants_model
                 *     * `wants_mould` - wants_mould
                 *     * `to_press` - to_press
                 *     * `in_mould` - in_mould
                 *     * `out` - out
                 *     * `joined` - joined
                 *     * `drying` - drying
                 *     * `bone_dry` - bone_dry
                 *     * `in_bisque` - in_bisque
                 *     * `bisqued` - bisqued
                 *     * `glazed` - glazed
                 *     * `in_glaze` - in_glaze
                 *     * `glaze_fired` - glaze_fired
                 *     * `checked` - checked
                 *     * `packed` - packed
                 *     * `delivered` - delivered
                 *     * `scrapped` - scrapped
                 *     * `missing` - missing
                 *     * `let_go` - let_go
                 */
                state?: "wants_model" | "wants_mould" | "to_press" | "in_mould" | "out" | "joined" | "drying" | "bone_dry" | "in_bisque" | "bisqued" | "glazed" | "in_glaze" | "glaze_fired" | "checked" | "packed" | "delivered" | "scrapped" | "missing" | "let_go";
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceListOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedPieceChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    touch_checks_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TouchCheckRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_checks_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TouchCheckInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    covers_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CoverRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_covers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CoverInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_drying_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DryingOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    firing_tickets_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FiringTicketOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_firing_tickets_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TicketInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_food_contact: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FoodContactOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_history: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TellingOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    moves_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MoveRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_moves_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MoveInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    parts_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartWholeOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_parts_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PartMadeInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PartActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_photos_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PhotographedInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotographedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_queue_turns_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TurnInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TurnActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    stage_events_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StageEventRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_stage_events_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["StageEventInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    piece_weighings_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceWeighingRowOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_pieces_weighings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PieceWeighingInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PieceActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    pieces_what_if: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                piece_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["SupposedInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SupposedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_placements_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                placement_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedPlacementChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_placements_removals_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                placement_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemovalInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoadActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    places_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_places_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlaceInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_places_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                place_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_places_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                place_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedPlaceChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    readings_list: {
        parameters: {
            query?: {
                /** @description Seconds; gives means of even steps instead. */
                every?: number;
                from?: string;
                to?: string;
                use?: "asked" | "left_out" | "used";
            };
            header?: never;
            path: {
                place_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingsOrSteps"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_places_readings_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                place_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["ReadingsInRequest"];
                "text/csv": string;
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingsOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    programmes_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgrammeOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_programmes_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ProgrammeInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgrammeActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    programmes_one: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                programme_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgrammeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_programmes_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                programme_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedProgrammeChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProgrammeActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_readings_answers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                reading_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadingAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    refused_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RefusedOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    reminders_list: {
        parameters: {
            query?: {
                state?: "done" | "due" | "snoozed";
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReminderOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_reminders_answers_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                reminder_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReminderAnswerInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReminderAnswerOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_retractions_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RetractionInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RetractionOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_runs_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                run_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RunOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_runs_destroy: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                run_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RunOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    search: {
        parameters: {
            query: {
                /** @description A few letters of a mark, a name, a number; accents and case do not matter. */
                q: string;
            };
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SearchOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    settings_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettingsOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    settings_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedSettingsInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettingsChangedOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    slab_blocks_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SlabBlockOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_slab_blocks_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SlabBlockInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SlabBlockOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_slab_blocks_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SlabBlockOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_slab_blocks_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedSlabBlockChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SlabBlockOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sums_drying_here: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DryingSumHereInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DryingSumHereOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_test_bars_retrieve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BarOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_test_bars_partial_update: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                row_id: string;
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: {
            content: {
                "application/json": components["schemas"]["PatchedBarChangeInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BarOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    test_reports_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JudgedReportOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    studios_test_reports_create: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TestReportInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestReportActOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    tokens_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TokenOutPage"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    tokens_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TokenInRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TokenMadeOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    tokens_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                slug: string;
                token_id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description No response body */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    sums_drying: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DryingSumInRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DryingSumOut"];
                };
            };
            /** @description What went wrong. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
