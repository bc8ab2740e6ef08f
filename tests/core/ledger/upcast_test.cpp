// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/upcast.h"

#include <gtest/gtest.h>

namespace ledger {
namespace {

using nlohmann::json;

Body bodyOf(const std::string& type, int version, json data) {
    Body body{.id = base::CommandId::random()};
    body.type = type;
    body.tv = version;
    body.data = std::move(data);
    return body;
}

/// A made-up type: version 1 had centimetres, version 2 millimetres, version 3 says which end.
Shapes lengthShapes() {
    Shapes shapes;
    shapes.know("length", 3);
    shapes.know("other", 1);
    shapes.add("length", 1, [](json data) -> base::Result<json> {
        if (!data.contains("cm")) return base::Error{base::Code::BadField, {"/cm", "is missing"}};
        return json{{"mm", data["cm"].get<int>() * 10}};
    });
    shapes.add("length", 2, [](json data) -> base::Result<json> {
        data["end"] = "outside";
        return data;
    });
    return shapes;
}

TEST(Upcast, CurrentStaysAsItIs) {
    Body body = bodyOf("other", 1, {{"x", 1}});
    EXPECT_EQ(*lengthShapes().lift(body), Lift::Current);
    EXPECT_EQ(body.data, (json{{"x", 1}}));
    EXPECT_FALSE(blocksSigning(body, Lift::Current));
}

TEST(Upcast, LiftedThroughEveryVersion) {
    Body body = bodyOf("length", 1, {{"cm", 4}});
    EXPECT_EQ(*lengthShapes().lift(body), Lift::Lifted);
    EXPECT_EQ(body.tv, 3);
    EXPECT_EQ(body.data, (json{{"mm", 40}, {"end", "outside"}}));
    EXPECT_FALSE(blocksSigning(body, Lift::Lifted));
}

TEST(Upcast, UnknownTypeIsKeptAndBlocksOnlyWhenItMust) {
    Body body = bodyOf("from-the-future", 1, {{"x", 1}});
    EXPECT_EQ(*lengthShapes().lift(body), Lift::UnknownType);
    EXPECT_EQ(body.data, (json{{"x", 1}}));
    EXPECT_TRUE(blocksSigning(body, Lift::UnknownType));
    body.must = false;
    EXPECT_FALSE(blocksSigning(body, Lift::UnknownType));
}

TEST(Upcast, NewerShapeIsKept) {
    Body body = bodyOf("length", 4, {{"x", 1}});
    EXPECT_EQ(*lengthShapes().lift(body), Lift::NewerShape);
    EXPECT_EQ(body.tv, 4);
    EXPECT_TRUE(blocksSigning(body, Lift::NewerShape));
}

TEST(Upcast, AStepThatFailsChangesNothing) {
    Body body = bodyOf("length", 1, {{"inch", 4}});
    EXPECT_EQ(lengthShapes().lift(body).error().code, base::Code::BadField);
    EXPECT_EQ(body.tv, 1);
    EXPECT_EQ(body.data, (json{{"inch", 4}}));
}

TEST(Upcast, CompleteMeansThatNoVersionIsLeftBehind) {
    Shapes shapes = lengthShapes();
    EXPECT_TRUE(shapes.isComplete());
    shapes.know("other", 2);
    EXPECT_FALSE(shapes.isComplete());
    Body body = bodyOf("other", 1, json::object());
    EXPECT_EQ(shapes.lift(body).error().code, base::Code::LedgerNoUpcast);
}

}  // namespace
}  // namespace ledger
